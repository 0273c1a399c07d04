package rundlauf.web;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import rundlauf.render.workbook.Assets;

/** Scripts and style sheets. */
final class AssetPages {
  private AssetPages() {}

  static void give(Context ctx) {
    Assets.Asset asset =
        Assets.find(ctx.pathParam("name")).orElseThrow(() -> new NotFoundResponse());
    boolean versioned = asset.version().equals(ctx.queryParam("v"));
    ctx.header("Cache-Control", versioned ? "max-age=31536000, immutable" : "no-cache");
    ctx.contentType(asset.type() + "; charset=utf-8").result(asset.bytes());
  }
}
