/** A module by someone else. */
module yard {
    requires org.fencecore;
    requires org.fencecore.units;
}
