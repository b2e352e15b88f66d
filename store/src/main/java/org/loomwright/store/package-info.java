/** Documents with all their revisions, pictures, releases and backups, in one database. */
@NullMarked
package org.loomwright.store;

import org.jspecify.annotations.NullMarked;
