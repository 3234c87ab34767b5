// A plain scale for one utilisation: ticks at 0 and 1, a break mark at its end, and a pointer that is hollow while the
// check holds and filled when it does not. All positions are attributes.

const SCALE = { zero: 8, one: 158, end: 200, beyond: 214, line: 15, width: 224, height: 20, labelled: 33 };

function scalePlace(utilisation) {
  if (utilisation === null) return SCALE.beyond;
  const place = SCALE.zero + utilisation * (SCALE.one - SCALE.zero);
  return place <= SCALE.end ? place : SCALE.beyond;
}

// `labelled` writes 0 and 1 beneath the ticks.
function scaleDrawing(check, labelled) {
  const { zero, one, end, line, width } = SCALE;
  const height = labelled ? SCALE.labelled : SCALE.height;
  const beyond = check.status === "fails";
  const tick = (x, up) => draw("line", { x1: x, x2: x, y1: line - up, y2: line + 4 });
  const label = (x, text) => draw("text", { x, y: height - 2, "text-anchor": "middle" }, text);
  return draw("svg", { class: "scale", viewBox: [0, 0, width, height].join(" "), "aria-hidden": "true", focusable: "false" },
    draw("path", { class: "axis", d: "M" + zero + " " + line + "H" + (end + 1) + "M" + (end + 8) + " " + line + "H" + (width - 2) }),
    draw("path", { class: "break", d: "M" + (end - 2) + " " + (line + 4) + "l6 -8m1 8l6 -8" }),
    tick(zero, 4), tick(one, 10),
    labelled && [label(zero, "0"), label(one, "1")],
    check.span && draw("line", { class: "span", x1: scalePlace(check.span[0]), x2: scalePlace(check.span[1]), y1: line, y2: line }),
    draw("path", { class: beyond ? "pointer beyond" : "pointer", "data-pointer": check.utilisation, d: "M0 0L-5 -10H5Z",
      transform: "translate(" + scalePlace(check.utilisation) + " " + line + ")" }));
}
