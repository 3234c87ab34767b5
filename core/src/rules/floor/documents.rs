//! The documents that floors are checked by.

use crate::calc::Document;

/// Westergaard 1926.
pub static WESTERGAARD_1926: Document = Document {
    short: "Westergaard 1926",
    title: "H. M. Westergaard, Stresses in Concrete Pavements Computed by Theoretical Analysis, Public Roads 7(2), 1926",
};
/// Westergaard 1948.
pub static WESTERGAARD_1948: Document = Document {
    short: "Westergaard 1948",
    title: "H. M. Westergaard, New Formulas for Stresses in Concrete Pavements of Airfields, Transactions ASCE 113, 1948",
};
/// Ioannides, Thompson and Barenberg 1985.
pub static IOANNIDES_1985: Document = Document {
    short: "Ioannides 1985",
    title: "A. M. Ioannides, M. R. Thompson and E. J. Barenberg, Westergaard Solutions Reconsidered, Transportation Research Record 1043, 1985",
};
/// Plate on a dense liquid.
pub static WINKLER_PLATE: Document =
    Document { short: "Winkler plate", title: "Infinite plate on springs under a point load, in Kelvin functions" };
/// Plate on a dense liquid with an edge.
pub static WINKLER_HALF_PLATE: Document = Document {
    short: "Winkler plate with an edge",
    title: "Half plane of a plate on springs with a straight free edge under a point load, by Fourier's integral along the edge",
};
/// Concrete Society TR34.
pub static TR34: Document = Document {
    short: "TR34",
    title: "Concrete Society Technical Report 34, Concrete industrial ground floors, 3rd and 4th edition",
};
/// ACI 360R.
pub static ACI_360R: Document = Document { short: "ACI 360R", title: "ACI 360R, Guide to Design of Slabs-on-Ground" };
/// UFC 3-320-06A.
pub static UFC_3_320_06A: Document = Document {
    short: "UFC 3-320-06A",
    title: "UFC 3-320-06A (TM 5-809-12), Concrete Floor Slabs on Grade Subjected to Heavy Loads, 2005",
};
/// ACI 318-19.
pub static ACI_318_19: Document = Document {
    short: "ACI 318-19",
    title: "Building Code Requirements for Structural Concrete (ACI 318-19), American Concrete Institute, 2019",
};
/// AISC 360-16.
pub static AISC_360_16: Document =
    Document { short: "AISC 360-16", title: "ANSI/AISC 360-16, Specification for Structural Steel Buildings, 2016" };
/// AISC Design Guide 1.
pub static AISC_DG1: Document = Document {
    short: "AISC Design Guide 1",
    title: "AISC Steel Design Guide 1, Base Plate and Anchor Rod Design, 1st and 2nd edition",
};
/// EN 1992-1-1.
pub static EN_1992_1_1: Document = Document {
    short: "EN 1992-1-1",
    title: "EN 1992-1-1:2004, Eurocode 2, Design of concrete structures, general rules",
};
/// EN 1993-1-8.
pub static EN_1993_1_8: Document =
    Document { short: "EN 1993-1-8", title: "EN 1993-1-8:2005, Eurocode 3, Design of joints" };
/// EN 1997-1.
pub static EN_1997_1: Document =
    Document { short: "EN 1997-1", title: "EN 1997-1:2004, Eurocode 7, Geotechnical design" };
/// EN 1990.
pub static EN_1990: Document =
    Document { short: "EN 1990", title: "EN 1990:2002, Eurocode, Basis of structural design" };
/// EN 1991-1-1.
pub static EN_1991_1_1: Document = Document {
    short: "EN 1991-1-1",
    title: "EN 1991-1-1:2002, Eurocode 1, Densities, self-weight, imposed loads for buildings",
};
/// EN 1991-2.
pub static EN_1991_2: Document =
    Document { short: "EN 1991-2", title: "EN 1991-2:2003, Eurocode 1, Traffic loads on bridges" };
/// ASCE 7, loads.
pub static ASCE_7_LOADS: Document = Document {
    short: "ASCE 7-16",
    title: "ASCE/SEI 7-16, Minimum Design Loads and Associated Criteria for Buildings and Other Structures",
};
/// TIA-942.
pub static TIA_942: Document =
    Document { short: "TIA-942", title: "ANSI/TIA-942, Telecommunications Infrastructure Standard for Data Centers" };
/// TIA-569.
pub static TIA_569: Document =
    Document { short: "TIA-569", title: "ANSI/TIA-569, Telecommunications Pathways and Spaces, as quoted by GSA P100" };
/// BS 6399-1.
pub static BS_6399_1: Document = Document {
    short: "BS 6399-1",
    title: "BS 6399-1, Loading for buildings, Code of practice for dead and imposed loads",
};
/// BS 8110.
pub static BS_8110: Document = Document { short: "BS 8110", title: "BS 8110-1:1997, Structural use of concrete" };
/// EN 12825.
pub static EN_12825: Document = Document { short: "EN 12825", title: "EN 12825:2001, Raised access floors" };
/// PSA MOB PF2 PS/SPU.
pub static PSA_MOB: Document = Document {
    short: "PSA MOB PF2 PS/SPU",
    title: "Property Services Agency, MOB PF2 PS/SPU, Platform floors (raised access floors), performance specification",
};
/// CISCA.
pub static CISCA: Document = Document {
    short: "CISCA",
    title: "Ceilings and Interior Systems Construction Association, Recommended Test Procedures for Access Floors",
};
/// IRC 58.
pub static IRC_58: Document = Document {
    short: "IRC 58",
    title: "Indian Roads Congress, IRC:58, Guidelines for the design of plain jointed rigid pavements",
};
/// FAA.
pub static FAA: Document = Document {
    short: "FAA",
    title: "Federal Aviation Administration, Advisory Circular 150/5320-6, Airport Pavement Design",
};
/// PCA.
pub static PCA: Document =
    Document { short: "PCA", title: "Portland Cement Association, correlation of subgrade modulus and CBR" };
/// Hertz.
pub static HERTZ: Document = Document {
    short: "Hertz",
    title: "Contact of elastic cylinders and spheres, as in R. L. Norton, Machine Design, chapter 7",
};
/// Measured rolling resistance.
pub static AL_EISAWI_1999: Document = Document {
    short: "Al-Eisawi 1999",
    title: "K. W. Al-Eisawi and others, Factors affecting minimum push and pull forces of manual carts, Applied Ergonomics 30, 1999, pp. 235-245",
};
/// Rolling in mechanics.
pub static ROLLING: Document = Document {
    short: "rolling friction",
    title: "Rolling friction as a lever arm, W. G. McLean, Engineering Mechanics",
};
/// Blodgett.
pub static BLODGETT: Document =
    Document { short: "Blodgett", title: "O. W. Blodgett, Design of Welded Structures, section 3.3, column bases" };
/// Beam on an elastic foundation.
pub static WINKLER_BEAM: Document = Document {
    short: "Winkler beam",
    title: "Beam on an elastic foundation, A. P. Boresi and R. J. Schmidt, Advanced Mechanics of Materials, chapter 10",
};
/// A hardware vendor's formula.
pub static VENDOR_FLOOR: Document = Document {
    short: "vendor formula",
    title: "Floor loading formula published by a maker of computers in its site planning pages",
};
