// How far a clause's transcription can be trusted: one quiet mark, and a legend that says what it means.

// From the most to the least to be trusted.
const TRUST_ORDER = ["published", "derived", "secondary", "memory"];

const TRUST_SHAPES = {
  published: ["circle", { cx: 5, cy: 5, r: 4, class: "full" }],
  secondary: ["path", { d: "M5 1A4 4 0 0 0 5 9Z", class: "full" }],
  memory: null,
  derived: ["path", { d: "M5 1.2L9 8.4H1Z", class: "full" }],
};

function trustMark(trust) {
  const shape = TRUST_SHAPES[trust];
  const ring = trust === "derived" ? null : draw("circle", { cx: 5, cy: 5, r: 4 });
  return draw("svg", { class: "trust", viewBox: "0 0 10 10", width: 10, height: 10, role: "img", "aria-label": trust, "data-trust": trust },
    draw("title", {}, trust + ": " + TRUST_WORDS[trust]),
    ring,
    shape && draw(...shape));
}

function trustLegend() {
  return make("p", { class: "legend" },
    "How far the text of a clause can be trusted: ",
    TRUST_ORDER.map((trust, place) => [trustMark(trust), " ", trust, ", ", TRUST_WORDS[trust], place < 3 ? "; " : "."]));
}

function leastTrust(trusts) {
  return TRUST_ORDER.filter((trust) => trusts.includes(trust)).pop() || null;
}
