@org.jspecify.annotations.NullMarked
package org.loomwright.model.design;
