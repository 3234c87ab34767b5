// The plan of a hall to scale: every cabinet where it stands, marked by its outcome in hatching that the legend names.

const HALL_PLAN_WIDTH = 720;
// Names are written on the cabinets as long as they can be read.
const HALL_NAMES_MAX = 200;

// Lines of the hatching in a square of eight units; the same in the plan, in the legend and on paper.
const HALL_HATCHES = {
  does_not_hold: "M0 0L8 8M8 0L0 8M4 -4L12 4M-4 4L4 12M-4 4L4 -4M4 12L12 4",
  cannot_be_said: "M-2 10L10 -2M-2 2L2 -2M6 10L10 6",
  faults: "M1.5 2H2.5M5.5 6H6.5",
};

// `scale` is of both axes; in the plan y points upwards.
function hallPattern(id, outcome, scale) {
  return draw("pattern", { id, width: 8, height: 8, patternUnits: "userSpaceOnUse", patternTransform: "scale(" + scale + ")" },
    draw("path", { class: "hatch " + outcome, d: HALL_HATCHES[outcome] }));
}

function hallSwatch(outcome) {
  const id = freshId("hall-swatch");
  return draw("svg", { class: "hall-swatch", width: 30, height: 18, viewBox: "0 0 30 18", "aria-hidden": "true" },
    HALL_HATCHES[outcome] && draw("defs", {}, hallPattern(id, outcome, 1)),
    draw("rect", { class: "base " + outcome, x: 1, y: 1, width: 28, height: 16, fill: HALL_HATCHES[outcome] ? "url(#" + id + ")" : "none" }));
}

function hallPlan(entries, outline, picked) {
  const standing = entries.filter(({ told }) => told !== null && told.row.standing);
  if (standing.length === 0) return null;
  let [left, front, right, rear] = [Infinity, Infinity, -Infinity, -Infinity];
  const reach = ([x, y]) => {
    left = Math.min(left, x);
    right = Math.max(right, x);
    front = Math.min(front, y);
    rear = Math.max(rear, y);
  };
  outline.forEach(reach);
  for (const { told: { row } } of standing) (row.standing.corners_mm || [row.standing.at_mm]).forEach(reach);
  const margin = 0.03 * Math.max(right - left, rear - front, 1000);
  const [width, height] = [right - left + 2 * margin, rear - front + 2 * margin];
  const unit = width / HALL_PLAN_WIDTH;
  const ids = Object.fromEntries(Object.keys(HALL_HATCHES).map((outcome) => [outcome, freshId("hall-hatch")]));
  const paths = new Map();
  const fronts = [];
  const points = [];
  for (const entry of standing) {
    const { corners_mm: corners, at_mm: at } = entry.told.row.standing;
    const outcome = hallOutcome(entry);
    if (!paths.has(outcome)) paths.set(outcome, []);
    if (corners) {
      paths.get(outcome).push("M" + corners.map((corner) => corner.join(" ")).join("L") + "Z");
      fronts.push("M" + corners[0].join(" ") + "L" + corners[1].join(" "));
    } else points.push("M" + (at[0] - 4 * unit) + " " + (at[1] - 4 * unit) + "l" + 8 * unit + " " + 8 * unit + "m0 " + -8 * unit + "l" + -8 * unit + " " + 8 * unit);
  }
  const chosen = picked && picked.told && picked.told.row.standing && picked.told.row.standing.corners_mm;
  const svg = draw("svg", { class: "hall-plan", "data-mm-per-unit": 1, width: HALL_PLAN_WIDTH, height: HALL_PLAN_WIDTH * height / width,
    viewBox: [left - margin, -rear - margin, width, height].join(" "), role: "img", "aria-label": hallPlanWords(entries, standing) },
    draw("defs", {}, Object.keys(HALL_HATCHES).map((outcome) => hallPattern(ids[outcome], outcome, unit + " " + -unit))),
    draw("g", { transform: "scale(1 -1)" },
      outline.length > 1 && draw("path", { class: "outline", d: "M" + outline.map((corner) => corner.join(" ")).join("L") + "Z" }),
      [...paths].map(([outcome, parts]) => draw("path", { class: "base " + outcome, "data-outcome": outcome, "data-count": parts.length, d: parts.join(""), fill: ids[outcome] ? "url(#" + ids[outcome] + ")" : "none" })),
      draw("path", { class: "front", d: fronts.join("") }),
      points.length > 0 && draw("path", { class: "base faults", "data-outcome": "faults", "data-count": points.length, d: points.join("") }),
      chosen && draw("path", { class: "picked", d: "M" + chosen.map((corner) => corner.join(" ")).join("L") + "Z" })),
    standing.length <= HALL_NAMES_MAX && standing.map(({ told: { row } }) =>
      draw("text", { x: row.standing.at_mm[0], y: -row.standing.at_mm[1] + 4 * unit, "font-size": 11 * unit, "stroke-width": 3 * unit, "text-anchor": "middle" }, row.place)));
  return svg;
}

function hallPlanWords(entries, standing) {
  const counts = hallCounts(entries);
  return "Plan of the hall, " + standing.length + " cabinets: " + HALL_OUTCOMES.filter((outcome) => counts[outcome] > 0).map((outcome) => counts[outcome] + " " + HALL_WORDS[outcome].toLowerCase()).join(", ");
}

function hallCounts(entries) {
  const counts = Object.fromEntries(HALL_OUTCOMES.map((outcome) => [outcome, 0]));
  for (const entry of entries) counts[hallOutcome(entry)] += 1;
  return counts;
}

// The cabinet under a point of the plan.
function hallEntryAt(svg, entries, event) {
  const place = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  const [x, y] = [place.x, -place.y];
  const turnsLeft = ([ax, ay], [bx, by]) => (bx - ax) * (y - ay) - (by - ay) * (x - ax) >= 0;
  return entries.find(({ told }) => {
    const corners = told && told.row.standing && told.row.standing.corners_mm;
    return corners && corners.every((corner, at) => turnsLeft(corner, corners[(at + 1) % 4]));
  }) || null;
}
