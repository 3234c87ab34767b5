// The rose: each of its points opens the working of its own direction, by pointer or by key.

const POINT_REACH_PX = 8;

class Rose extends Drawing {
  constructor(pick) {
    super("rose", CAPTIONS.rose);
    this.pick = pick;
    this.current = null;
  }

  picture(drawing) {
    const { report } = this.asked.assessment;
    const svg = drawingOf(drawing, drawing.marks.some((mark) => mark.class.startsWith("direction")));
    const points = [...svg.querySelectorAll(".direction")].map((element) => withReach(element));
    if (points.length === 0) return svg;
    const placed = points.map((element) => report.rose[Number(element.dataset.index)]);
    // One stop of the tab key for the whole rose; the arrow keys go round it.
    const start = Math.max(0, placed.indexOf(nearestPoint(placed.filter(Boolean), this.directionOf(report))));
    points.forEach((element, place) => {
      const point = placed[place];
      if (!point) return;
      element.setAttribute("role", "button");
      element.setAttribute("tabindex", place === start ? "0" : "-1");
      element.setAttribute("aria-label", this.label(point, report));
      element.setAttribute("data-key", "rose " + place);
      element.append(draw("title", {}, this.label(point, report)));
      element.addEventListener("click", () => this.pick(point));
      element.addEventListener("keydown", (event) => this.key(event, points, place, point));
    });
    return svg;
  }

  directionOf(report) {
    if (this.current !== null) return this.current;
    const check = report.governs === null ? null : report.checks[report.governs];
    return check && check.at ? check.at.direction_rad : 0;
  }

  label(point, report) {
    const check = point.check === null || point.check === undefined ? null : report.checks[point.check];
    return [shown(point.direction_rad, ANGLE), pointValue(point), check && checkTitle(check.id)].filter(Boolean).join(", ") + "; open the working";
  }

  key(event, points, place, point) {
    const moves = { ArrowRight: -1, ArrowUp: 1, ArrowLeft: 1, ArrowDown: -1, PageUp: 6, PageDown: -6 };
    if (event.key === "Enter" || event.key === " ") {
      this.pick(point);
    } else if (event.key in moves) {
      const next = points[(place + moves[event.key] + points.length) % points.length];
      points.forEach((element) => element.setAttribute("tabindex", element === next ? "0" : "-1"));
      this.current = this.asked.assessment.report.rose[Number(next.dataset.index)].direction_rad;
      next.focus({ preventScroll: true });
    } else {
      return;
    }
    event.preventDefault();
  }
}

// The point within a group that can be hit more easily than the point itself.
function withReach(element) {
  const group = draw("g", { "data-index": element.getAttribute("data-at-index") });
  element.replaceWith(group);
  group.append(draw("circle", { class: "reach", cx: element.getAttribute("cx"), cy: element.getAttribute("cy"), r: POINT_REACH_PX }), element);
  return group;
}

function pointValue(point) {
  return point.utilisation === null || point.utilisation === undefined ? "no balance" : shown(point.utilisation, UTILISATION, { rounding: "up" });
}
