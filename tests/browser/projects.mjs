// Projects for the tests of the page, and the address that carries one.
import { deflateRawSync, inflateRawSync } from 'node:zlib';

/** A cabinet that uses every part of the file: three contents, four feet, four anchors, one edge, a rule each. */
export function sample() {
  const corners = (x, y) => [[-x, -y], [x, -y], [x, y], [-x, y]];
  return {
    format: 'steadfoot 1',
    title: 'sample',
    cabinet: {
      width_mm: 1000, depth_mm: 1300, height_mm: 2300,
      frame: { mass_kg: 650, centre_mm: [0, 0, 900] },
      feet: corners(430, 580).map((at_mm, place) => ({ name: ['front left', 'front right', 'rear right', 'rear left'][place], at_mm, size_mm: [120, 120] })),
      anchors: corners(470, 620).map((at_mm) => ({ at_mm })),
    },
    contents: [
      { name: 'tray 1', mass_kg: 620, bottom_mm: 300, size_mm: [900, 1100, 250], offset_mm: [0, 0], drawn_out_mm: 0 },
      { name: 'tray 2', mass_kg: 540, bottom_mm: 700, size_mm: [900, 1100, 250], offset_mm: [40, -30], drawn_out_mm: 0 },
      { name: 'tray 3', mass_kg: 120, bottom_mm: 1100, size_mm: [900, 1100, 250], offset_mm: [0, 0], drawn_out_mm: 0 },
    ],
    slab: { strength_mpa: 28, thickness_mm: 300, edges_mm: { left: 900, right: null, front: null, rear: null }, cracked: true, friction: 0.2 },
    site: {
      rule: 'asce-7-16', s_ds: 1.4, importance_factor: 1, component: 'sheet-metal-cabinet', attachment_height_m: 0, roof_height_m: 12,
    },
    anchorage: { rule: 'aci-318-19-si', bolt: 'M16', steel: 'iso-8.8', embedment_mm: 125 },
  };
}

/** A project whose cabinet is so many times wider than deep, or deeper than wide. */
export function stretched(times) {
  const project = sample();
  const [width, depth] = times >= 1 ? [700 * times, 700] : [700, 700 / times];
  Object.assign(project.cabinet, { width_mm: width, depth_mm: depth });
  const place = ([x, y], inset) => [Math.sign(x) * (width / 2 - inset), Math.sign(y) * (depth / 2 - inset)];
  for (const foot of project.cabinet.feet) foot.at_mm = place(foot.at_mm, 80);
  for (const anchor of project.cabinet.anchors) anchor.at_mm = place(anchor.at_mm, 30);
  for (const content of project.contents) Object.assign(content, { size_mm: [width - 100, depth - 100, 250], offset_mm: [0, 0] });
  project.slab.edges_mm = { left: width / 2 + 300, right: null, front: null, rear: depth / 2 + 400 };
  return project;
}

/** What the address carries: the deflated project as base64url. */
export function packed(text) {
  return deflateRawSync(Buffer.from(text)).toString('base64url');
}

export function unpacked(data) {
  return inflateRawSync(Buffer.from(data, 'base64url')).toString('utf8');
}

/** The whole check's page with a project in its address; for the one file its place stands behind the project. */
export function checkPage(from, project = null, units = '') {
  const data = project === null ? '' : `1.${packed(typeof project === 'string' ? project : JSON.stringify(project))}${units && `.${units}`}`;
  if (from === 'alone') return `#${data && `${data}.`}check`;
  return `check.html${data && `#${data}`}`;
}
