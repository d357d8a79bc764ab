package org.fencecore.examples;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.fencecore.FencePlan;
import org.fencecore.packet.BuildPacket;

/**
 * What the examples do with their plans: print the sheet, and write the packet where the property {@code fence.packets}
 * points, which the build sets to its own folder; without it, under {@code target} where the program was started.
 */
final class Packets {

    private Packets() {}

    static void printAndWrite(FencePlan plan, String name) throws IOException {
        printAndWrite(BuildPacket.of(plan), name);
    }

    static void printAndWrite(BuildPacket packet, String name) throws IOException {
        System.out.print(packet.sheet().toText());
        Path folder = Path.of(System.getProperty("fence.packets", "target")).resolve(name);
        Files.createDirectories(folder);
        Map<String, String> files = packet.files();
        for (Map.Entry<String, String> file : files.entrySet()) {
            Files.writeString(folder.resolve(file.getKey()), file.getValue());
        }
        System.out.println("\n" + files.size() + " files of the packet are in " + fromHere(folder));
    }

    /** The way from where the program was started, so that it is short, true, and the same on every machine. */
    private static String fromHere(Path folder) {
        Path here = Path.of("").toAbsolutePath();
        Path there = folder.toAbsolutePath().normalize();
        Path way = there.startsWith(here) ? here.relativize(there) : there;
        return way.toString().replace(File.separatorChar, '/');
    }
}
