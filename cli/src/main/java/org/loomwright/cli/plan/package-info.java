/** The commands that plan kits: read a folder, plan, print the summary, write the packs. */
@NullMarked
package org.loomwright.cli.plan;

import org.jspecify.annotations.NullMarked;
