/**
 * Plans a whole fence: from the site and the style wanted to the posts, bays, boards and gates the crew builds.
 */
@NullMarked
package org.fencecore;

import org.jspecify.annotations.NullMarked;
