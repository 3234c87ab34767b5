//! The documents that the demand rules transcribe.

use crate::calc::Document;

/// Uniform Building Code, 1997.
pub static UBC_1997: Document = Document {
    short: "UBC 1997",
    title: "Uniform Building Code, Volume 2: Structural Engineering Design Provisions, 1997 edition",
};

/// Uniform Building Code, 1994.
pub static UBC_1994: Document = Document {
    short: "UBC 1994",
    title: "Uniform Building Code, Volume 2: Structural Engineering Design Provisions, 1994 edition",
};

/// ASCE/SEI 7-05.
pub static ASCE_7_05: Document =
    Document { short: "ASCE 7-05", title: "ASCE/SEI 7-05, Minimum Design Loads for Buildings and Other Structures" };

/// ASCE/SEI 7-10.
pub static ASCE_7_10: Document =
    Document { short: "ASCE 7-10", title: "ASCE/SEI 7-10, Minimum Design Loads for Buildings and Other Structures" };

/// ASCE/SEI 7-16.
pub static ASCE_7_16: Document = Document {
    short: "ASCE 7-16",
    title: "ASCE/SEI 7-16, Minimum Design Loads and Associated Criteria for Buildings and Other Structures",
};

/// ASCE/SEI 7-22.
pub static ASCE_7_22: Document = Document {
    short: "ASCE 7-22",
    title: "ASCE/SEI 7-22, Minimum Design Loads and Associated Criteria for Buildings and Other Structures",
};

/// TI 809-04 of the United States Army.
pub static TI_809_04: Document = Document {
    short: "TI 809-04",
    title: "TI 809-04, Seismic Design for Buildings, United States Army Corps of Engineers, 1998 (UFC 3-310-03A)",
};

/// FEMA 302, on which TI 809-04 rests.
pub static FEMA_302: Document = Document {
    short: "FEMA 302",
    title: "FEMA 302, NEHRP Recommended Provisions for Seismic Regulations for New Buildings, 1997 edition",
};

/// The guideline of the Building Centre of Japan for building equipment.
pub static JAPAN_EQUIPMENT: Document = Document {
    short: "Japan equipment guideline",
    title: "Guideline for the seismic design and construction of building equipment, Building Centre of Japan, 2005 and 2014 editions",
};

/// GB 50011.
pub static GB_50011: Document =
    Document { short: "GB 50011-2010", title: "GB 50011-2010, Code for seismic design of buildings, China" };

/// GB 55002.
pub static GB_55002: Document = Document {
    short: "GB 55002-2021",
    title: "GB 55002-2021, General code for seismic precaution of buildings and municipal engineering, China",
};

/// The seismic code of Taiwan.
pub static TAIWAN: Document = Document {
    short: "Taiwan seismic code",
    title: "Seismic design specifications and commentary of buildings, Taiwan, 2011 and 2022 editions",
};

/// NSCP.
pub static NSCP_2015: Document = Document {
    short: "NSCP 2015",
    title: "National Structural Code of the Philippines, Volume 1: Buildings, Towers and Other Vertical Structures, 2015",
};

/// SNI 1726.
pub static SNI_1726: Document = Document {
    short: "SNI 1726:2019",
    title: "SNI 1726:2019, Seismic resistance design procedures for building and nonbuilding structures, Indonesia",
};

/// E.030.
pub static E_030: Document =
    Document { short: "E.030", title: "Norma Técnica E.030, Diseño Sismorresistente, Peru, 2018" };

/// E.060.
pub static E_060: Document = Document { short: "E.060", title: "Norma E.060, Concreto Armado, Peru, 2009" };

/// NSR-10.
pub static NSR_10: Document = Document {
    short: "NSR-10",
    title: "NSR-10, Reglamento Colombiano de Construcción Sismo Resistente, Colombia, 2010",
};

/// NZS 1170.5.
pub static NZS_1170_5: Document = Document {
    short: "NZS 1170.5",
    title: "NZS 1170.5:2004 with amendment 1, Structural design actions, Part 5: Earthquake actions - New Zealand",
};

/// AS 1170.4.
pub static AS_1170_4: Document = Document {
    short: "AS 1170.4",
    title: "AS 1170.4:2007 with the amendment of 2018, Structural design actions, Part 4: Earthquake actions in Australia",
};

/// AS/NZS 1170.0.
pub static AS_NZS_1170_0: Document = Document {
    short: "AS/NZS 1170.0",
    title: "AS/NZS 1170.0:2002, Structural design actions, Part 0: General principles",
};

/// AS 5216.
pub static AS_5216: Document =
    Document { short: "AS 5216", title: "AS 5216, Design of post-installed and cast-in fastenings in concrete" };

/// EN 1998-1.
pub static EN_1998_1: Document = Document {
    short: "EN 1998-1",
    title: "EN 1998-1:2004 with A1:2013, Design of structures for earthquake resistance, Part 1: General rules, seismic actions and rules for buildings",
};

/// EN 1990.
pub static EN_1990: Document = Document { short: "EN 1990", title: "EN 1990:2002, Basis of structural design" };

/// NTC 2018.
pub static NTC_2018: Document = Document {
    short: "NTC 2018",
    title: "Norme tecniche per le costruzioni, decree of 17 January 2018, with the Circolare of 21 January 2019, Italy",
};

/// P100-1.
pub static P100_1: Document =
    Document { short: "P100-1/2013", title: "P100-1/2013, Cod de proiectare seismica, Part I, Romania" };

/// IS 1893.
pub static IS_1893: Document = Document {
    short: "IS 1893 (Part 1):2016",
    title: "IS 1893 (Part 1):2016, Criteria for earthquake resistant design of structures, India",
};

/// The draft for IS 1893 that has a force for components.
pub static IITK_GSDMA: Document = Document {
    short: "IITK-GSDMA-EQ05",
    title: "IITK-GSDMA-EQ05, proposed draft provisions and commentary on IS 1893 (Part 1), with Mondal and Jain, Indian Concrete Journal, 2005",
};

/// The book and the code that take the whole zone factor.
pub static GSDMA_2012: Document = Document {
    short: "Murty et al. 2012",
    title: "Murty, Goswami, Vijayanarayanan, Mehta: Some concepts in earthquake behaviour of buildings, GSDMA, 2012; non-structural clause of IS 16700:2017",
};

/// NBC 2015.
pub static NBC_2015: Document = Document {
    short: "NBC 2015",
    title: "National Building Code of Canada 2015, Division B, article 4.1.8.18 (the same form as in 2005, 2010 and the Ontario Building Code 2012)",
};

/// NBC 2020.
pub static NBC_2020: Document =
    Document { short: "NBC 2020", title: "National Building Code of Canada 2020, Division B, article 4.1.8.18" };
