package rundlauf.render.plain;

import rundlauf.quantity.Arg;
import rundlauf.quantity.Figure;
import rundlauf.reduce.sideload.Shares;
import rundlauf.reduce.sideload.Shares.Share;

/** Who gives way, joint by joint; where nothing is shared out, none. */
final class SharesText {
  private SharesText() {}

  static void write(Sheet sheet, Shares shares) {
    if (shares.entries().isEmpty()) {
      return;
    }
    sheet.heading("heading-shares");
    shares.entries().forEach(share -> row(sheet, share));
  }

  private static void row(Sheet sheet, Share share) {
    String name = share.joint().equals("shank") ? sheet.word("label-own-bending") : share.joint();
    if (!share.share().known()) {
      sheet.figure(name, share.compliance());
      return;
    }
    String compliance = value(sheet, share, share.compliance());
    sheet.row(
        name,
        sheet.word(
            "share-of-whole", Arg.of(value(sheet, share, share.share())), Arg.of(compliance)));
  }

  private static String value(Sheet sheet, Share share, Figure figure) {
    String value = sheet.value(figure);
    return share.bound().map(bound -> sheet.word(code(bound)) + " " + value).orElse(value);
  }

  private static String code(Shares.Bound bound) {
    return switch (bound) {
      case AT_LEAST -> "bound-at-least";
      case AT_MOST -> "bound-at-most";
    };
  }
}
