/** Pictures in the window: shown, enlarged, moved, picked, copied, saved and printed. */
package org.copperbook.desk.picture;
