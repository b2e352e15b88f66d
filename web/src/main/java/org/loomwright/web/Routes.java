package org.loomwright.web;

import io.javalin.config.RoutesConfig;

/** A group of addresses that belong together. */
interface Routes {
  /** Says which address is answered by what. */
  void add(RoutesConfig routes);
}
