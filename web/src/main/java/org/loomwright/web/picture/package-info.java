/** Pictures of the store, and photos of faces with the cavities marked. */
@NullMarked
package org.loomwright.web.picture;

import org.jspecify.annotations.NullMarked;
