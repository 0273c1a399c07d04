package rundlauf.web;

import io.javalin.config.RoutesConfig;

/** Pages that belong together. */
interface Group {
  /** Says which requests they answer. */
  void on(RoutesConfig routes);
}
