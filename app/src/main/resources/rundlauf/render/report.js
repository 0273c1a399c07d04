"use strict";
(() => {
  const charts = JSON.parse(document.getElementById("charts").textContent);
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

  const line = (name, data, extra) => ({
    type: "line", name, data, showSymbol: false, symbol: "none", z: 2, lineStyle: { color: colour("fit"), width: 2 },
    itemStyle: { color: colour("fit") }, ...extra,
  });

  const dots = (name, data, extra) => ({
    type: "scatter", name, data, z: 3, symbolSize: 8,
    itemStyle: { color: colour("sheet"), borderColor: colour("reading"), borderWidth: 2 }, ...extra,
  });

  const polar = (c) => {
    const round = (rs) => pairs(rs, c.fitAngles);
    const on = { coordinateSystem: "polar" };
    const inner = -1.5 * c.span;
    const label = (r) => (Math.abs(r) === c.span || r === 0 ? (r > 0 ? "+" + r + " " + c.unit : r) : "");
    return {
      ...base(),
      polar: { radius: "80%" },
      angleAxis: { type: "value", min: 0, max: 360, startAngle: 90, interval: 45,
        axisLabel: { color: colour("ink"), formatter: "{value}°", margin: 5 }, axisTick: { show: false },
        axisLine: { lineStyle: { color: colour("soft") } }, splitLine: { lineStyle: { color: colour("grid") } } },
      radiusAxis: { type: "value", min: inner, max: c.span, interval: c.span / 2, z: 4,
        axisLabel: { color: colour("ink"), formatter: label },
        axisTick: { show: false }, axisLine: { lineStyle: { color: colour("grid") } },
        splitLine: { lineStyle: { color: colour("grid") } } },
      series: [
        line("", c.fitAngles.map((a) => [0, a]), { ...on, silent: true, z: 1,
          lineStyle: { color: colour("soft"), width: 1, type: "dashed" } }),
        band(c.words.band, round(c.low), round(c.high), on),
        line(c.words.fit, round(c.fit), { ...on, silent: true }),
        dots(c.words.readings, pairs(c.readings, c.angles), { ...on,
          tooltip: { formatter: (p) => p.value[1] + "°: " + p.value[0] + " " + c.unit } }),
      ],
    };
  };

  const load = (c) => {
    const shapes = ["circle", "rect", "triangle", "diamond"];
    const tip = { formatter: (p) => p.value[0] + " N: " + p.value[1] + " µm" };
    const series = c.loops.map((loop, i) => line(loop.name, pairs(loop.loads, loop.readings).map((value, k) => ({
      value,
      itemStyle: { color: colour(loop.falling[k] ? "sheet" : "reading"), borderColor: colour("reading"), borderWidth: 2 },
    })), { showSymbol: true, symbol: shapes[i % shapes.length], symbolSize: 8, z: 3, tooltip: tip,
      lineStyle: { color: colour("reading"), width: 1, type: i % 2 ? "dotted" : "solid" }, itemStyle: { color: colour("reading") } }));
    c.lines.forEach((l) => series.push(line(l.name, pairs(l.loads, l.readings), { silent: true })));
    return {
      ...base(),
      ...(c.loops.length > 1 ? { legend: { bottom: 0, textStyle: { color: colour("ink") } } } : {}),
      grid: { left: 30, right: 18, top: 14, bottom: c.loops.length > 1 ? 70 : 40, containLabel: true },
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

  const forces = (c) => {
    const dashes = ["dashed", "dotted", [8, 3, 2, 3]];
    const last = c.rows.length - 1;
    const tip = { formatter: (p) => p.seriesName + ", " + p.value[0] + "°: " + p.value[1] + " N" };
    return {
      ...base(),
      legend: { bottom: 0, textStyle: { color: colour("ink") } },
      grid: { left: 30, right: 18, top: 14, bottom: 84, containLabel: true },
      xAxis: axis(c.words["angle-axis"], { min: 0, max: 360, interval: 60, scale: false }),
      yAxis: axis(c.words["force-axis"], { nameGap: 46 }),
      series: c.rows.map((r, i) => line(r.name, pairs(c.angles, r.forces), { tooltip: tip,
        lineStyle: i === last ? { color: colour("fit"), width: 3 } : { color: colour("reading"), width: 1.5, type: dashes[i] },
        itemStyle: { color: colour(i === last ? "fit" : "reading") } })),
    };
  };

  const chips = (c) => ({
    ...base(),
    grid: { left: 30, right: 18, top: 14, bottom: 44, containLabel: true },
    xAxis: { type: "category", data: c.teeth.map((t) => t.name), axisTick: { show: false },
      axisLabel: { color: colour("ink"), interval: 0 }, axisLine: { lineStyle: { color: colour("soft") } } },
    yAxis: axis(c.words["chip-axis"], { nameGap: 40, min: 0, scale: false }),
    series: [
      { type: "bar", barMaxWidth: 60, itemStyle: { color: colour("bar") }, data: c.teeth.map((t) => t.chip),
        tooltip: { formatter: (p) => p.name + ": " + p.value + " µm" } },
      { type: "custom", silent: true, z: 3, encode: { x: 0, y: [1, 2] }, data: c.teeth.map((t, i) => [i, t.low, t.high]),
        renderItem: (params, api) => {
          const [x, low] = api.coord([api.value(0), api.value(1)]);
          const high = api.coord([api.value(0), api.value(2)])[1];
          const stroke = { stroke: colour("ink"), lineWidth: 1.5 };
          const stroke1 = (x1, y1, x2, y2) => ({ type: "line", shape: { x1, y1, x2, y2 }, style: stroke });
          return { type: "group", children: [stroke1(x, low, x, high), stroke1(x - 6, low, x + 6, low), stroke1(x - 6, high, x + 6, high)] };
        } },
    ],
  });

  const options = { polar, load, speed, budget, forces, chips };

  const drawAll = () => {
    drawn.splice(0).forEach((d) => d.dispose());
    charts.forEach((c) => {
      const plot = document.querySelector('[data-chart="' + c.id + '"]');
      plot.classList.add("drawn");
      if (c.kind === "budget") {
        plot.style.height = 60 + 48 * c.bars.length + "px";
      }
      const chart = echarts.init(plot);
      chart.setOption(options[c.kind](c));
      drawn.push(chart);
    });
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

  drawAll();
  unfold();
  addEventListener("hashchange", unfold);
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", drawAll);
  addEventListener("resize", () => drawn.forEach((d) => d.resize()));
})();
