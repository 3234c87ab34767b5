//! The steps and reasons of legs beside each other, of rails, of rows of cabinets, of grout and of single legs.

use crate::calc::clause::{INPUT, STATICS};
use crate::calc::steps;
use crate::rules::floor::documents::{
    ACI_318_19, AISC_360_16, EN_1993_1_8, TR34, UFC_3_320_06A, WESTERGAARD_1948, WINKLER_BEAM,
};

steps! { 185 "legs, rails and rows on a floor";
    N_ALL "N" Force (STATICS "upper bound" Derived) "Load of the leg with all legs within reach, put on this place" = "N + P_o";
    N_MEETS "N_n" Force (STATICS "plan" Derived) "Loads of the legs whose perimeters meet its own: they punch as one, on the rectangle around them": Given;
    N_TOGETHER "N" Force (STATICS "plan" Derived) "Load of all of them" = "N + N_n";
    E_LEG "e" Length (STATICS "plan" Derived) "From the leg's middle to the nearest edge, joint or opening": Given;
    E_NEAR "e_n" Length (TR34 "interior, edge and corner" Memory) "Nearer than this the leg counts as standing right at the edge, which is cautious: the guide interpolates from there to the edge" = "l + a";
    S_BEYOND "sigma_o" Stress (STATICS "upper bound" Derived) "Tension of legs near an edge if they stood on this place, which they cannot exceed" = "sigma_1 * P_o / P";
    S_TOTAL "sigma_u" Stress (STATICS "superposition" Derived) "Tension of all legs" = "sigma_1 + sigma_n + sigma_o";
    BOUND_YIELD "" Number (TR34 "dual and quadruple loads" Memory) "the forms for two and for four legs are for legs far from edges, four of them at the corners of a rectangle; the leg alone holds, all near legs on its place would not: finite elements or a yield-line analysis of its own decide": Reason;
    N_RAIL "N" Force (STATICS "base reactions" Derived) "Force of the rail": Given;
    L_RAIL "L_p" Length (STATICS "base reactions" Derived) "Length on which it presses: twice the way from the force to the nearer end": Given;
    P_RAIL "p" LineLoad (STATICS "" Derived) "Load per length of the rail" = "N / L_p";
    X_RELIEF "x_0" Length (WINKLER_BEAM "" Published) "Distance from which on a line load relieves and is left out" = "3.141592653589793 / (4 * lambda)";
    P_NEAR "p_n" LineLoad (WINKLER_BEAM "superposition" Derived) "Loads per length of nearer rails, each by its share e^(-lambda x) (cos lambda x - sin lambda x), with nu times those across": Given;
    P_SUM "p_s" LineLoad (WINKLER_BEAM "superposition" Derived) "Load per length with nearer rails" = "p + p_n";
    P_CASE "p_u" LineLoad (STATICS "load case" Derived) "That load, with the factors that it has" = "p_s";
    P_FACTORED "p_u" LineLoad (STATICS "factored" Derived) "Factored load per length" = "gamma * p_s";
    M_ALLOWED "m_a" Force (STATICS "m = sigma h^2 / 6" Derived) "Moment per width that the slab is allowed" = "sigma_a * h^2 / 6";
    P_ALONG "p_a" LineLoad (WINKLER_BEAM "long line" Published) "Line load that it carries far from edges" = "4 * lambda * m_a";
    P_ALONG_EDGE "p_a" LineLoad (UFC_3_320_06A "Table 3-3" Memory) "Line load that it carries at a free edge" = "3.103 * lambda * m_a";
    P_YIELD_EDGE "p_a" LineLoad (UFC_3_320_06A "Table 3-3" Memory) "Line load that it carries at a free edge" = "3.103 * lambda * M_n";
    P_YIELD "p_a" LineLoad (TR34 "line load" Memory) "Line load that it carries far from edges" = "4 * lambda * M_n";
    U_RAIL "u" Utilisation (STATICS "" Derived) "Load per length over what the slab carries" = "p_u / p_a";
    RAIL_CORNER "" Number (UFC_3_320_06A "3-3" Published) "a rail at a free corner: line loads are in print for the middle of a slab and for a free edge only": Reason;
    RAIL_AND_FEET "" Number (WINKLER_BEAM "" Published) "single feet stand within four radii of relative stiffness of a rail: no published form puts both together": Reason;
    W "W" Force (STATICS "" Derived) "Weight of the cabinet": Given;
    P_X "p_x" Length (INPUT "floor" Derived) "Pitch of the cabinets along a row": Given;
    L_Y "L_y" Length (INPUT "cabinet" Derived) "Depth of the row": Given;
    Q_ROW "q_r" AreaLoad (STATICS "" Derived) "Load of a row over its depth" = "W / (p_x * L_y)";
    Q_ROW_SERVICE "q_u" AreaLoad (STATICS "at service" Derived) "That load, at service" = "q_r";
    Q_ROW_FACTORED "q_u" AreaLoad (STATICS "factored" Derived) "Factored load of the row" = "gamma * q_r";
    W_ROW "w_a" AreaLoad (WINKLER_BEAM "rows with the worst aisle" Memory) "Load over an area that it carries with the worst aisle" = "5.95 * lambda^2 * m_a";
    W_ROW_YIELD "w_a" AreaLoad (TR34 "uniform load" Memory) "Load over an area that it carries with the worst aisle" = "5.95 * lambda^2 * M_n";
    U_ROW "u" Utilisation (STATICS "" Derived) "Load of the row over what the slab carries" = "q_u / w_a";
    Q_GIVEN "Q_k" Force (INPUT "floor" Derived) "Design concentrated load of the floor, given by its owner": Given;
    Q_CODE "Q_k" Force (INPUT "floor" Derived) "Design concentrated load for the use that the floor was designed for": Given;
    U_LEG "u" Utilisation (STATICS "" Derived) "Heaviest leg over the design concentrated load, both at service" = "N / Q_k";
    T_GROUT "t_g" Length (INPUT "floor" Derived) "Thickness of the grout": Given;
    F_GROUT "f_g" Stress (INPUT "floor" Derived) "Strength of the grout": Given;
    A_GROUT "A_1" Area (STATICS "base reactions" Derived) "Area in the foot whose middle is where its force acts": Given;
    R_GROUT_EN "R_g" Force (EN_1993_1_8 "6.2.5(7)" Memory) "Design strength of the joint on grout" = "f_jd * A_1";
    R_GROUT "R_g" Force (ACI_318_19 "22.8.3.2, A_2 = A_1" Memory) "Design bearing strength of the grout, which is no wider than the foot" = "0.65 * 0.85 * f_g * A_1";
    R_GROUT_ASD "R_g" Force (AISC_360_16 "J8, A_2 = A_1" Memory) "Allowable bearing strength of the grout, which is no wider than the foot" = "0.85 * f_g * A_1 / 2.31";
    U_GROUT "u" Utilisation (STATICS "" Derived) "Load over bearing strength on grout" = "P_u / R_g";
    NO_GROUT_STRENGTH "" Number (INPUT "floor" Derived) "the thickness of the grout is given (grout_mm), but not its strength (grout_strength_mpa)": Reason;
    GROUT_BY_TEST "" Number (EN_1993_1_8 "6.2.5(7)" Memory) "the factor 2/3 of a joint is for grout of at least 0.2 of the concrete's strength, not thicker than 0.2 of the foot's smaller width, and over 50 mm thick at least as strong as the concrete; any other joint is tested": Reason;
    EDGE_ALONE "" Number (WESTERGAARD_1948 "edge" Memory) "Westergaard's closed forms for an edge or corner know a single load, and the plates on springs by which legs are put together have no edge or a single straight one; here a second edge or an opening is near: the leg alone holds, all near legs on its place would not, and finite elements decide": Reason;
}
