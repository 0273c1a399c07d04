"use strict";
(() => {
  let charts = JSON.parse(document.getElementById("charts").textContent);
  const drawn = [];

  const colour = (name) => getComputedStyle(document.documentElement).getPropertyValue("--" + name).trim();

  const pairs = (xs, ys) => xs.map((x, i) => [x, ys[i]]);

  const base = () => ({
    animation: false,
    textStyle: { color: colour("ink"), fontFamily: "system-ui, Liberation Sans, DejaVu Sans, sans-serif", fontSize: 12 },
    legend: { show: false },
    tooltip: { renderMode: "richText", trigger: "item", backgroundColor: colour("sheet"), borderColor: colour("rule"),
      textStyle: { color: colour("ink") } },
    aria: { enabled: false },
  });

  const axis = (name, extra) => ({
    type: "value", name, nameLocation: "middle", nameGap: 28, scale: true,
    nameTextStyle: { color: colour("ink") }, axisLabel: { color: colour("ink"), hideOverlap: true, margin: 10, formatter: String },
    axisLine: { show: true, lineStyle: { color: colour("soft") } }, splitLine: { lineStyle: { color: colour("grid") } },
    ...extra,
  });

  // An area between two rows, drawn in whatever coordinates the series has.
  const band = (name, low, high, extra) => ({
    type: "custom", name, silent: true, z: 1, itemStyle: { color: colour("band"), opacity: 0.28 },
    data: [[0, 0]], tooltip: { show: false },
    renderItem: (params, api) => ({
      type: "polygon",
      shape: { points: low.concat(high.slice().reverse()).map((p) => api.coord(p)) },
      style: { fill: colour("band"), opacity: 0.28 },
    }),
    ...extra,
  });

  // The same with its edge drawn, where the edge itself says something.
  const edged = (name, low, high, paint) => [band(name, low, high, on),
    ...[low, high].filter((row) => row.length).map((row) => line("", row, { ...on, silent: true, z: 1, lineStyle: { color: colour(paint), width: 1 } }))];

  const line = (name, data, extra) => ({
    type: "line", name, data, showSymbol: false, symbol: "none", z: 2, lineStyle: { color: colour("fit"), width: 2 },
    itemStyle: { color: colour("fit") }, ...extra,
  });

  const dots = (name, data, extra) => ({
    type: "scatter", name, data, z: 3, symbolSize: 8,
    itemStyle: { color: colour("sheet"), borderColor: colour("reading"), borderWidth: 2 }, ...extra,
  });

  // What goes round a centre: angles from the top clockwise unless told otherwise.
  const round = (inner, outer, step, radiusLabel, angle, size) => ({
    ...base(),
    polar: { radius: size.radius, center: ["50%", size.centre] },
    angleAxis: { type: "value", min: 0, max: 360, startAngle: 90, interval: 45,
      axisLabel: { color: colour("ink"), formatter: "{value}°", margin: 5 }, axisTick: { show: false },
      axisLine: { lineStyle: { color: colour("soft") } }, splitLine: { lineStyle: { color: colour("grid") } }, ...angle },
    radiusAxis: { type: "value", min: inner, max: outer, interval: step, z: 4,
      axisLabel: { color: colour("ink"), formatter: radiusLabel },
      axisTick: { show: false }, axisLine: { lineStyle: { color: colour("grid") } },
      splitLine: { lineStyle: { color: colour("grid") } } },
  });

  const on = { coordinateSystem: "polar" };
  const whole = { radius: "80%", centre: "50%" };

  // A round chart with a key: as large as its width lets it, the key's rows below.
  const rows = { clocking: [5, 3], roundness: [3, 3], rose: [3, 2], ring: [3, 3] };
  const keyed = (c, width) => {
    const radius = Math.round(Math.max(0, Math.min(140, (width - 96) / 2))); // a page that is not shown has no width
    return { radius, centre: radius + 30, height: 2 * radius + 62 + 25 * rows[c.kind][width < 420 ? 0 : 1] };
  };

  // The key names lines by their strokes alone: a dot on them would be one more mark to explain.
  const stroke = (name) => ({ name, itemStyle: { opacity: 0 } });
  const shade = (name) => ({ name, icon: "rect", itemStyle: { opacity: 0.28 } });
  const key = (names) => ({ legend: { bottom: 0, left: "center", itemGap: 12, itemWidth: 34, selectedMode: false,
    textStyle: { color: colour("ink") }, data: names } });

  const rim = (span, unit) => (r) => (Math.abs(r) === span || r === 0 ? (r > 0 ? "+" + r + " " + unit : r) : "");

  const circle = (name, r, extra) => line(name, Array.from({ length: 73 }, (_, i) => [r, 5 * i]), { ...on, silent: true, ...extra });

  const polar = (c) => {
    const at = (rs) => pairs(rs, c.fitAngles);
    return {
      ...round(-1.5 * c.span, c.span, c.span / 2, rim(c.span, c.unit), {}, whole),
      series: [
        circle("", 0, { z: 1, lineStyle: { color: colour("soft"), width: 1, type: "dashed" } }),
        ...(c.fit.length ? [band(c.words.band, at(c.low), at(c.high), on), line(c.words.fit, at(c.fit), { ...on, silent: true })] : []),
        dots(c.words.readings, pairs(c.readings, c.angles), { ...on,
          tooltip: { formatter: (p) => p.value[1] + "°: " + p.value[0] + " " + c.unit } }),
      ],
    };
  };

  const dashes = ["solid", [9, 4], [9, 3, 2, 3]];

  // The nose from the tool's side: rings as the parts sit in one another, a mark on each, and which way it runs.
  const nose = (c, span) => {
    const rings = { spindle: 1.4, collet: 1.27, shank: 1.14 };
    const shapes = { spindle: "triangle", collet: "rect", shank: "diamond" };
    const bearing = c.clockwise ? -1 : 1;
    const marks = c.marks.map((m) => ({ type: "scatter", name: m.name + " " + m.angle + "°", ...on, z: 5, symbol: shapes[m.part],
      symbolSize: m.part === "shank" ? 15 : 12, symbolRotate: m.part === "spindle" ? 180 : bearing * m.angle, itemStyle: { color: colour("ink") },
      data: [[rings[m.part] * span, m.angle]], tooltip: { formatter: "{a}" } }));
    const below = c.marks.slice(1).map((m) => circle("", rings[m.part] * span, { z: 1, lineStyle: { color: colour("soft"), width: 1 } }));
    const running = { type: "custom", ...on, silent: true, z: 5, data: [[0, 0]], tooltip: { show: false }, renderItem: (params, api) => {
      const at = (r, a) => api.coord([r * span, a]);
      return { type: "group", children: [
        { type: "polyline", shape: { points: Array.from({ length: 9 }, (_, i) => at(1.52, 12 + 2 * i)) }, style: { stroke: colour("ink"), lineWidth: 1.5, fill: "none" } },
        { type: "polygon", shape: { points: [at(1.58, 27), at(1.46, 27), at(1.52, 34)] }, style: { fill: colour("ink") } },
      ] };
    } };
    return { below, above: [...marks, running], bearing, names: marks.map((m) => ({ name: m.name })) };
  };

  const clocking = (c, width) => {
    const drawing = nose(c, c.span);
    const arrow = (a, extra, size) => line(a.name, [{ value: [0, a.angle], symbol: "none" },
      { value: [a.length, a.angle], symbol: a.told ? "arrow" : "none", symbolSize: size, symbolRotate: drawing.bearing * a.angle }],
    { ...on, showSymbol: true, symbol: "none", ...extra });
    const styled = (a, i) => ({ color: colour("reading"), width: 2, type: a.told ? dashes[i] : "dotted" });
    const label = (r) => (r === c.span ? r + " " + c.unit : "");
    return {
      ...round(0, 1.4 * c.span, c.span / 2, label, { clockwise: c.clockwise }, keyed(c, width)),
      ...key([...drawing.names, ...[...c.arrows, c.together].map((a) => stroke(a.name)), stroke(c.words.within)]),
      series: [
        ...drawing.below,
        ...c.arrows.flatMap((a) => edged("", pairs(a.lengths, a.angles), [], "reading")),
        circle(c.words.within, c.within, { lineStyle: { color: colour("fit"), width: 1.5, type: "dashed" } }),
        ...c.arrows.map((a, i) => arrow(a, { lineStyle: styled(a, i), itemStyle: { color: colour("reading") } }, 11)),
        arrow(c.together, { z: 4, lineStyle: { color: colour("fit"), width: 4, type: c.together.told ? "solid" : "dotted" }, itemStyle: { color: colour("fit") } }, 15),
        ...drawing.above,
      ],
    };
  };

  // On a card: the marks alone.
  const ring = (c, width) => {
    const drawing = nose(c, 1);
    return { ...round(0, 1.4, 2, "", { clockwise: c.clockwise }, keyed(c, width)), ...key(drawing.names),
      series: [...drawing.below, ...drawing.above] };
  };

  const roundness = (c, width) => {
    const of = (kind) => c.circles.find((k) => k.kind === kind);
    const drawnAs = (kind, type, width, paint) => line(of(kind).name, pairs(of(kind).heights, c.angles),
      { ...on, silent: true, lineStyle: { color: colour(paint), width, type }, itemStyle: { color: colour(paint) } });
    const zone = [of("zone-inner"), of("zone-outer")].map((k) => pairs(k.heights, c.angles));
    return {
      ...round(-1.5 * c.span, c.span, c.span / 2, rim(c.span, c.unit), {}, keyed(c, width)),
      ...key([stroke(c.words.profile), stroke(of("least-squares").name), shade(c.words.zone),
        stroke(of("circumscribed").name), stroke(of("inscribed").name)]),
      series: [
        line("", c.angles.map((a) => [0, a]), { ...on, silent: true, z: 1,
          lineStyle: { color: colour("soft"), width: 1, type: "dashed" } }),
        ...edged(c.words.zone, zone[0], zone[1], "band"),
        drawnAs("least-squares", "dotted", 2, "ink"),
        drawnAs("circumscribed", [9, 4], 1.5, "reading"),
        drawnAs("inscribed", [9, 3, 2, 3], 1.5, "reading"),
        line(c.words.profile, pairs(c.profile, c.angles), { ...on, silent: true, z: 3, lineStyle: { color: colour("fit"), width: 2.5 } }),
      ],
    };
  };

  const rose = (c, width) => {
    const at = (rs) => pairs(rs, c.angles);
    const along = { 0: "+X", 90: "+Y", 180: "−X", 270: "−Y" };
    const label = (r) => (r === c.span ? r + " " + c.unit : r === 0 ? 0 : "");
    const axes = c.axes.flatMap((a, i) => {
      const style = { color: colour("reading"), width: 2, type: i ? [9, 4] : "solid" };
      const arc = (turned) => line("", Array.from({ length: 13 }, (_, k) => [c.span, a.from + turned + (a.to - a.from) * k / 12]),
        { ...on, silent: true, z: 5, lineStyle: { color: colour("reading"), width: 6, type: i ? [3, 2] : "solid" } });
      return [line(a.name, [[a.compliance, a.angle], [0, a.angle], [a.compliance, a.angle + 180]],
        { ...on, silent: true, lineStyle: style, itemStyle: { color: style.color } }), arc(0), arc(180)];
    });
    return {
      ...round(0, c.span, c.span / 2, label,
        { startAngle: 0, clockwise: false, axisLabel: { color: colour("ink"), margin: 5, formatter: (d) => along[d] || d + "°" } }, keyed(c, width)),
      ...key([stroke(c.words.compliance), shade(c.words.band), ...c.axes.map((a) => stroke(a.name)), { name: c.words.pushes }]),
      series: [
        band(c.words.band, at(c.low), at(c.high), on),
        line(c.words.compliance, at(c.curve), { ...on, silent: true }),
        ...axes,
        ...c.pushes.map((p) => line("", [[p.low, p.angle], [p.high, p.angle]], { ...on, silent: true, lineStyle: { color: colour("reading"), width: 1.5 } })),
        dots(c.words.pushes, c.pushes.map((p) => [p.compliance, p.angle]), { ...on,
          tooltip: { formatter: (p) => p.value[1] + "°: " + p.value[0] + " " + c.unit } }),
      ],
    };
  };

  // How many rows a key takes that breaks where the width ends.
  const keyRows = (names, width) => names.reduce(([count, used], name) => {
    const item = 50 + 6.6 * name.length;
    return used + item > width ? [count + 1, item] : [count, used + item];
  }, [1, 0])[0];

  const loadKey = (c) => [...new Set([...c.loops, ...c.lines].map((drawnLine) => drawnLine.name))];

  const load = (c, width) => {
    const shapes = ["circle", "rect", "triangle", "diamond"];
    const tip = { formatter: (p) => p.value[0] + " N: " + p.value[1] + " µm" };
    const names = [...new Set(c.loops.map((loop) => loop.name))];
    const series = c.loops.map((loop) => [loop, names.indexOf(loop.name)]).map(([loop, i]) => line(loop.name, pairs(loop.loads, loop.readings).map((value, k) => ({
      value,
      itemStyle: { color: colour(loop.falling[k] ? "sheet" : "reading"), borderColor: colour("reading"), borderWidth: 2 },
    })), { showSymbol: true, symbol: shapes[i % shapes.length], symbolSize: 8, z: 3, tooltip: tip,
      lineStyle: { color: colour("reading"), width: 1, type: i % 2 ? "dotted" : "solid" }, itemStyle: { color: colour("reading") } }));
    c.lines.forEach((l) => series.push(line(l.name, pairs(l.loads, l.readings), { silent: true })));
    return {
      ...base(),
      ...(c.loops.length > 1 ? { legend: { bottom: 0, textStyle: { color: colour("ink") } } } : {}),
      grid: { left: 30, right: 18, top: 14, bottom: c.loops.length > 1 ? 46 + 25 * keyRows(loadKey(c), width) : 40, containLabel: true },
      xAxis: axis(c.words["load-axis"]), yAxis: axis(c.words["reading-axis"], { nameGap: 40 }), series,
    };
  };

  const speed = (c) => {
    const marks = c.usable ? [
      { yAxis: c.usable[0], label: { formatter: c.words.slowest } },
      { yAxis: c.usable[1], label: { formatter: c.words.fastest } },
    ] : [];
    const tip = { formatter: (p) => p.value[0] + " " + c.settingUnit + ": " + p.value[1] + " rpm" };
    return {
      ...base(),
      grid: { left: 30, right: 18, top: 24, bottom: 40, containLabel: true },
      xAxis: axis(c.words["setting-axis"] + (c.settingUnit ? ", " + c.settingUnit : "")), yAxis: axis(c.words["speed-axis"], { nameGap: 54 }),
      series: [
        band(c.words.band, pairs(c.curveSettings, c.low), pairs(c.curveSettings, c.high), { encode: { x: -1, y: -1 } }),
        line(c.words.curve, pairs(c.curveSettings, c.curve), { silent: true, markLine: { silent: true, symbol: "none",
          lineStyle: { color: colour("soft"), type: "dashed" },
          label: { position: "insideStartTop", color: colour("ink") }, data: marks } }),
        dots(c.words.readings, pairs(c.settings, c.readings), { tooltip: tip }),
      ],
    };
  };

  const rise = (c) => ({
    ...base(),
    grid: { left: 30, right: 18, top: 24, bottom: 40, containLabel: true },
    xAxis: axis(c.words["time-axis"]), yAxis: axis(c.words["reading-axis"], { nameGap: 40 }),
    series: [
      band(c.words.band, pairs(c.times, c.low), pairs(c.times, c.high), { encode: { x: -1, y: -1 } }),
      line(c.words.fit, pairs(c.times, c.curve), { silent: true }),
      dots(c.words.readings, pairs(c.times, c.readings), { tooltip: { formatter: (p) => p.value[0] + " min: " + p.value[1] + " µm" } }),
    ],
  });

  // Each bar's name stands over it, so that long names fit a narrow page.
  const budget = (c) => ({
    ...base(),
    grid: { left: 8, right: 60, top: 8, bottom: 44 },
    xAxis: axis(c.words["u-axis"] + ", " + c.unit, { min: 0, splitNumber: 3, axisLabel: { color: colour("ink"), hideOverlap: true, align: "left", formatter: String } }),
    yAxis: { type: "category", inverse: true, data: c.bars.map((b) => b.name), axisTick: { show: false }, z: 4,
      axisLine: { lineStyle: { color: colour("soft") } },
      axisLabel: { color: colour("ink"), inside: true, interval: 0, verticalAlign: "bottom", padding: [0, 0, 12, 0] } },
    series: [{ type: "bar", barWidth: 14, itemStyle: { color: colour("bar") },
      tooltip: { formatter: (p) => p.name + ": " + p.value + " " + c.unit },
      label: { show: true, position: "right", color: colour("ink"), formatter: (p) => c.bars[p.dataIndex].share + " %" },
      data: c.bars.map((b) => b.u) }],
  });

  // From the load to the foot; where no share is only a limit, first the whole parted among them.
  const shares = (c) => {
    const names = [...(c.whole ? [c.words.whole] : []), ...c.shares.map((s) => s.name)];
    const stroke1 = (x1, y1, x2, y2) => ({ type: "line", shape: { x1, y1, x2, y2 }, style: { stroke: colour("ink"), lineWidth: 1.5 } });
    const box = (api, from, to, row, style) => {
      const [x, y] = api.coord([from, row]);
      return { type: "rect", shape: { x, y: y - 7, width: api.coord([to, row])[0] - x, height: 14 }, style };
    };
    const filled = { fill: colour("bar"), stroke: colour("ink"), lineWidth: 1 };
    const hollow = { fill: "none", stroke: colour("ink"), lineWidth: 1.5, lineDash: [5, 3] };
    const parted = (api) => {
      let from = 0;
      return c.shares.map((s, i) => box(api, from, from += s.share, 0, i % 2 ? { ...filled, fill: colour("sheet") } : filled));
    };
    const drawnRow = (api, s, row) => {
      const [low, y] = api.coord([s.low, row]);
      const [high] = api.coord([s.high, row]);
      const [end] = api.coord([s.share, row]);
      const arrow = { type: "polygon", shape: { points: [[end, y - 10], [end + 12, y], [end, y + 10]] }, style: filled };
      return [box(api, 0, s.share, row, s.bound && !s.least ? hollow : filled), ...(s.least ? [arrow] : []),
        stroke1(low, y, high, y), stroke1(low, y - 5, low, y + 5), stroke1(high, y - 5, high, y + 5),
        { type: "text", style: { text: (s.bound + " " + s.share + " %").trim(), x: Math.max(high, end + (s.least ? 12 : 0)) + 8, y,
          verticalAlign: "middle", fill: colour("ink"), font: "12px system-ui, Liberation Sans, DejaVu Sans, sans-serif" } }];
    };
    return {
      ...base(),
      grid: { left: 8, right: 92, top: 8, bottom: 44 },
      xAxis: axis(c.words["share-axis"], { min: 0, max: 100, interval: 25, scale: false }),
      yAxis: { type: "category", inverse: true, data: names, axisTick: { show: false }, z: 4,
        axisLine: { lineStyle: { color: colour("soft") } },
        axisLabel: { color: colour("ink"), inside: true, interval: 0, verticalAlign: "bottom", padding: [0, 0, 12, 0] } },
      series: [{ type: "custom", silent: true, data: [[0, 0]], encode: { x: -1, y: -1 }, renderItem: (params, api) => ({ type: "group",
        children: [...(c.whole ? parted(api) : []), ...c.shares.flatMap((s, i) => drawnRow(api, s, c.whole ? i + 1 : i))] }) }],
    };
  };

  const forces = (c, width) => {
    const below = keyRows(c.rows.map((r) => r.name), width);
    const types = ["dashed", "dotted", [8, 3, 2, 3]];
    const last = c.rows.length - 1;
    const tip = { formatter: (p) => p.seriesName + ", " + p.value[0] + "°: " + p.value[1] + " N" };
    return {
      ...base(),
      legend: { bottom: 0, textStyle: { color: colour("ink") } },
      grid: { left: 46, right: 18, top: 14, bottom: 46 + 25 * below, containLabel: true },
      xAxis: axis(c.words["angle-axis"], { min: 0, max: 360, interval: 60, scale: false }),
      yAxis: axis(c.words["force-axis"], { nameGap: 46 }),
      series: c.rows.map((r, i) => line(r.name, pairs(c.angles, r.forces), { tooltip: tip,
        lineStyle: i === last ? { color: colour("fit"), width: 3 } : { color: colour("reading"), width: 1.5, type: types[i] },
        itemStyle: { color: colour(i === last ? "fit" : "reading") } })),
    };
  };

  const whiskers = (list) => ({
    type: "custom", silent: true, z: 3, encode: { x: 0, y: [1, 2] }, data: list.map((t, i) => [i, t.low, t.high]),
    renderItem: (params, api) => {
      const [x, low] = api.coord([api.value(0), api.value(1)]);
      const high = api.coord([api.value(0), api.value(2)])[1];
      const stroke = { stroke: colour("ink"), lineWidth: 1.5 };
      const stroke1 = (x1, y1, x2, y2) => ({ type: "line", shape: { x1, y1, x2, y2 }, style: stroke });
      return { type: "group", children: [stroke1(x, low, x, high), stroke1(x - 6, low, x + 6, low), stroke1(x - 6, high, x + 6, high)] };
    },
  });

  const chips = (c) => ({
    ...base(),
    grid: { left: 40, right: 18, top: 14, bottom: 44, containLabel: true },
    xAxis: { type: "category", data: c.teeth.map((t) => t.name), axisTick: { show: false },
      axisLabel: { color: colour("ink"), interval: 0 }, axisLine: { lineStyle: { color: colour("soft") } } },
    yAxis: axis(c.words["chip-axis"], { nameGap: 40, min: 0, scale: false }),
    series: [
      { type: "bar", barMaxWidth: 60, itemStyle: { color: colour("bar") }, data: c.teeth.map((t) => t.chip),
        tooltip: { formatter: (p) => p.name + ": " + p.value + " µm" } },
      whiskers(c.teeth),
    ],
  });

  // One whisker a trial: its interval, and the value on it.
  const history = (c) => ({
    ...base(),
    grid: { left: 40, right: 18, top: 14, bottom: 44, containLabel: true },
    xAxis: { type: "category", name: c.words["date-axis"], nameLocation: "middle", nameGap: 28, nameTextStyle: { color: colour("ink") },
      data: c.moments.map((m) => m.date), axisTick: { show: false },
      axisLabel: { color: colour("ink"), hideOverlap: true }, axisLine: { lineStyle: { color: colour("soft") } } },
    yAxis: axis(c.unit, { nameGap: 40 }),
    series: [
      whiskers(c.moments),
      { type: "scatter", z: 4, symbolSize: 9, itemStyle: { color: colour("sheet"), borderColor: colour("reading"), borderWidth: 2 },
        data: c.moments.map((m, i) => [i, m.value]), tooltip: { formatter: (p) => c.moments[p.dataIndex].date + ": " + p.value[1] + " " + c.unit } },
    ],
  });

  const options = { polar, load, speed, rise, budget, forces, chips, history, clocking, roundness, rose, ring, shares };

  const heights = {
    budget: (c) => 60 + 48 * c.bars.length,
    shares: (c) => 60 + 48 * (c.shares.length + (c.whole ? 1 : 0)),
    load: (c, width) => (c.loops.length > 1 ? 280 + 25 * keyRows(loadKey(c), width) : 0),
    forces: (c, width) => 280 + 25 * keyRows(c.rows.map((r) => r.name), width),
  };

  const tall = (c, width) => (heights[c.kind] ? heights[c.kind](c, width) : rows[c.kind] ? keyed(c, width).height : 0);

  // On paper a chart has a size of its own: the page's width is not known before it is printed.
  const onPaper = (c) => {
    const width = c.kind === "polar" || rows[c.kind] ? 320 : 640;
    return { devicePixelRatio: 2, width, height: tall(c, width) || 290 };
  };

  const plotOf = (c) => document.querySelector('[data-chart="' + c.id + '"]');

  // A folded chart is drawn when it is unfolded: before, it has no width.
  const draw = (c, printed) => {
    const plot = plotOf(c);
    const seen = printed || !plot.closest("details:not([open])");
    plot.classList.toggle("drawn", seen);
    if (!seen) return;
    const size = printed ? onPaper(c) : { width: plot.clientWidth };
    const height = tall(c, size.width);
    plot.style.height = !printed && height ? height + "px" : "";
    const chart = echarts.init(plot, null, printed ? size : {});
    chart.setOption(options[c.kind](c, size.width));
    chart.getZr().flush();
    drawn.push(chart);
  };

  const drawAll = (printed) => {
    drawn.splice(0).forEach((d) => d.dispose());
    document.documentElement.classList.toggle("printed", printed);
    charts.forEach((c) => draw(c, printed));
  };

  // A link may lead into something folded.
  const unfold = () => {
    const target = location.hash && document.getElementById(location.hash.slice(1));
    for (let e = target; e; e = e.parentElement) {
      if (e.tagName === "DETAILS") e.open = true;
    }
    if (target) {
      target.querySelectorAll(":scope > .blocks > .folded").forEach((e) => { e.open = true; });
      target.scrollIntoView();
    }
  };

  const unfoldFigures = (printed) => {
    document.querySelectorAll(printed ? ".folded:not([open])" : ".folded[data-unfolded]").forEach((e) => {
      if (e.querySelector(".figures")) {
        e.open = printed;
        e.toggleAttribute("data-unfolded", printed);
      }
    });
  };

  let width = document.documentElement.clientWidth;
  let onPaperNow = false;
  const print = (printed) => {
    if (printed === onPaperNow) return;
    onPaperNow = printed;
    unfoldFigures(printed);
    drawAll(printed);
  };

  // A card alone: the rest of the page is left out while it is printed.
  const printCard = (card) => {
    const alone = card.cloneNode(true);
    alone.removeAttribute("id");
    document.body.append(alone);
    document.documentElement.classList.add("one-card");
    const done = () => {
      document.documentElement.classList.remove("one-card");
      alone.remove();
    };
    addEventListener("afterprint", done, { once: true });
    window.print();
  };

  drawAll(false);
  unfold();
  document.querySelectorAll(".card .print").forEach((b) => {
    b.hidden = false;
    b.addEventListener("click", () => printCard(b.closest(".card")));
  });
  // A page that has changed gives its charts anew.
  document.addEventListener("charts", (e) => {
    charts = e.detail;
    drawAll(onPaperNow);
  });
  document.addEventListener("toggle", (e) => {
    charts.filter((c) => e.target.open && e.target.contains(plotOf(c)) && !plotOf(c).classList.contains("drawn")).forEach((c) => draw(c, onPaperNow));
  }, true);
  addEventListener("hashchange", unfold);
  addEventListener("beforeprint", () => print(true));
  addEventListener("afterprint", () => print(false));
  matchMedia("print").addEventListener("change", (e) => print(e.matches));
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => drawAll(onPaperNow));
  addEventListener("resize", () => {
    if (onPaperNow || width === document.documentElement.clientWidth) return;
    width = document.documentElement.clientWidth;
    drawAll(false);
  });
})();
