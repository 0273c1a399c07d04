package rundlauf.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import rundlauf.quantity.Place;
import rundlauf.quantity.Refused;

/**
 * What a sheet sends: {@code {"key", "cells": [{"column", "text"}]}} for a reading, {@code
 * {"reason"}} for a strike.
 *
 * @param key that the device gave the reading
 * @param cells as typed
 */
public record SentReading(String key, List<Cell> cells) {
  private static final ObjectMapper JSON = new ObjectMapper();

  public SentReading {
    cells = List.copyOf(cells);
  }

  /** What was typed under a column. */
  public record Cell(String column, String text) {}

  /**
   * Reads a reading.
   *
   * @throws Refused when the text is not such a document
   */
  public static SentReading read(String document) {
    JsonNode sent = parse(document);
    List<Cell> cells = new ArrayList<>();
    for (JsonNode cell : sent.path("cells")) {
      cells.add(new Cell(text(cell, "column"), text(cell, "text")));
    }
    return new SentReading(text(sent, "key"), cells);
  }

  /**
   * Reads the reason of a strike.
   *
   * @throws Refused when the text is not such a document
   */
  public static String reason(String document) {
    return text(parse(document), "reason");
  }

  private static JsonNode parse(String document) {
    try {
      JsonNode sent = JSON.readTree(document);
      if (sent != null && sent.isObject()) {
        return sent;
      }
    } catch (JsonProcessingException unreadable) {
      // said below
    }
    throw Refused.at(Place.NOWHERE, "request-not-understood");
  }

  private static String text(JsonNode node, String field) {
    JsonNode text = node.path(field);
    if (!text.isTextual()) {
      throw Refused.at(Place.NOWHERE.field(field), "request-not-understood");
    }
    return text.asText();
  }
}
