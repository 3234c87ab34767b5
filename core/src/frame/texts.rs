//! The steps of the frame.

use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::{Document, steps};

/// AISC 360.
pub static AISC_360: Document =
    Document { short: "AISC 360-16", title: "ANSI/AISC 360-16, Specification for Structural Steel Buildings" };
/// EN 1993-1-1.
pub static EN_1993_1_1: Document = Document {
    short: "EN 1993-1-1",
    title: "EN 1993-1-1:2005, Eurocode 3: Design of steel structures, Part 1-1: General rules and rules for buildings",
};
/// ASCE 7.
pub static ASCE_7: Document = Document {
    short: "ASCE 7-16",
    title: "ASCE/SEI 7-16, Minimum Design Loads and Associated Criteria for Buildings and Other Structures",
};
/// Plates that buckle.
pub static PLATES: Document = Document {
    short: "theory of plates",
    title: "Elastic buckling of a rectangular plate in shear, as textbooks give it",
};
/// Dynamics of structures.
pub static RAYLEIGH: Document =
    Document { short: "Rayleigh", title: "Rayleigh's quotient with the shape under sideways weight" };

steps! { 24 "frame";
    AXIS_X "" Number (INPUT "structure" Derived) "Pushed to the right or to the left": Name;
    AXIS_Y "" Number (INPUT "structure" Derived) "Pushed to the rear or to the front": Name;
    N "n" Number (INPUT "structure" Derived) "Storeys between braces or beams": Given;
    H_F "h_f" Length (INPUT "structure" Derived) "Height of the frame": Given;
    H_S "h_s" Length (STATICS "" Derived) "Height of a storey" = "h_f / n";
    E "E" Stress (INPUT "structure" Derived) "Modulus of elasticity": Given;
    I_C "I_c" SecondMoment (INPUT "structure" Derived) "Second moment of area of a post for this push": Given;
    N_C "n_c" Number (INPUT "structure" Derived) "Posts": Given;
    I_B "I_b" SecondMoment (INPUT "structure" Derived) "Second moment of area of a beam for this push": Given;
    L_B "L" Length (INPUT "cabinet" Derived) "Length of a beam: the distance between the posts": Given;
    K_J "k_j" Moment (INPUT "structure" Derived) "Stiffness of a corner against turning, moment per radian": Given;
    R_T "r_t" Moment (STATICS "beam in sway and corner in series" Derived) "Turning stiffness at the head of a post" = "1 / (L / (6 * E * I_b) + 1 / k_j)";
    R_T_RIGID "r_t" Moment (STATICS "beam in sway, rigid corner" Derived) "Turning stiffness at the head of a post" = "6 * E * I_b / L";
    N_J "n_j" Number (STATICS "posts above and below a beam share it" Derived) "Posts that share the end of a beam": Condition;
    ALPHA_T "alpha_t" Number (STATICS "slope deflection" Derived) "Turning stiffness at the head over that of the post" = "r_t * h_s / (n_j * E * I_c)";
    K_FIXED "k_c" Stiffness (STATICS "slope deflection, foot held" Derived) "Sideways stiffness of a post held at its foot" = "12 * E * I_c / h_s^3 * (alpha_t + 1) / (alpha_t + 4)";
    K_PINNED "k_c" Stiffness (STATICS "slope deflection, foot free to turn" Derived) "Sideways stiffness of a post free to turn at its foot" = "12 * E * I_c / h_s^3 * alpha_t / (4 * alpha_t + 12)";
    K_BOTH "k_c" Stiffness (STATICS "slope deflection, the same beams above and below" Derived) "Sideways stiffness of a post between two beams" = "12 * E * I_c / h_s^3 * alpha_t / (alpha_t + 6)";
    K_PORTAL "k_s" Stiffness (STATICS "posts in parallel" Derived) "Stiffness of a storey" = "n_c * k_c";
    K_LOW "k_1" Stiffness (STATICS "posts in parallel" Derived) "Stiffness of the lowest storey": Given;
    A_D "A_d" Area (INPUT "structure" Derived) "Area of a brace": Given;
    N_F "n_f" Number (INPUT "structure" Derived) "Faces that are braced or skinned for this push": Given;
    L_D "L_d" Length (STATICS "" Derived) "Length of a brace" = "sqrt(L^2 + h_s^2)";
    COS "cos_d" Number (STATICS "" Derived) "Cosine of its slope" = "L / L_d";
    K_D "k_d" Stiffness (STATICS "one diagonal a face works, the other goes slack" Derived) "Stiffness of the braces of a storey" = "n_f * E * A_d / L_d * cos_d^2";
    A_C "A_c" Area (INPUT "structure" Derived) "Area of a post": Given;
    K_P "k_p" Stiffness (STATICS "posts lengthen and shorten" Derived) "Stiffness of a single storey against the lengthening of its own posts; below others they carry the moment of all that is above, which bends the whole frame" = "n_f * E * A_c * L^2 / h_s^3";
    G_S "G" Stress (STATICS "Poisson's ratio 0.3" Derived) "Shear modulus of the skin" = "E / 2.6";
    T_S "t_s" Length (INPUT "structure" Derived) "Thickness of a skin": Given;
    ETA "eta" Number (PRACTICE "slip of screws leaves 0.05 to 0.30" Memory) "Share of the skin's stiffness that its screws let through": Given;
    K_SKIN "k_s" Stiffness (STATICS "a sheet in shear" Derived) "Stiffness of a storey" = "n_f * eta * G * t_s * L / h_s";
    M_J "m_i" Mass (STATICS "masses shared by the nearest levels" Derived) "Mass at each level, from below": Geometry;
    H_J "h_i" Length (STATICS "" Derived) "Height of each level": Geometry;
    K_TH "k_th" Moment (STATICS "sum of k x^2 of the feet" Derived) "Stiffness of the base against turning, moment per radian": Geometry;
    K_TH_HELD "k_th" Moment (STATICS "sum of k x^2 of feet and tight anchors" Derived) "Stiffness of the base against turning, moment per radian": Geometry;
    S_S "s_s" Length (STATICS "" Derived) "Shorter side of a sheet between its edges" = "min(L, h_s)";
    L_S "l_s" Length (STATICS "" Derived) "Its longer side" = "max(L, h_s)";
    K_TAU "k_tau" Number (PLATES "four sides held" Memory) "Buckling factor of a sheet in shear" = "5.34 + 4 * (s_s / l_s)^2";
    TAU_CR "tau_cr" Stress (PLATES "Poisson's ratio 0.3" Memory) "Shear stress at which a skin buckles" = "k_tau * pi^2 * E / 10.92 * (t_s / s_s)^2";
    TAU "tau" Stress (STATICS "the whole mass over the lowest storey" Derived) "Shear stress of a skin of the lowest storey" = "V / (n_f * t_s * L)";
    BUCKLES "" Number (PLATES "" Memory) "the skins of the lowest storey buckle in shear under this push, and their stiffness goes with that": Reason;
    T_N "T_n" Time (INPUT "structure" Derived) "Period of the neighbour": Given;
    S_MIN_ROOT "s_min" Length (PRACTICE "periods that differ by more than a tenth" Memory) "Gap that is needed, for movements that hardly meet" = "sqrt(u_r^2 + u_n^2)";
    D_J "d_i" Length (STATICS "weights laid sideways, storeys in series, posts that lengthen, base that turns" Derived) "Movement of each level under its own weight laid sideways": Solved;
    G "g" Gravity (STATICS "9.80665 m/s2" Derived) "Weight of a mass": Given;
    D_E "d_e" Length (RAYLEIGH "" Derived) "Movement of the mass as a whole, weights laid sideways" = "sum(m_i * d_i^2) / sum(m_i * d_i)";
    G_F "g_f" FreeFall (STATICS "9.80665 m/s2" Derived) "Acceleration of gravity": Given;
    PI "pi" Number (STATICS "" Derived) "Half a turn": Constant;
    T_1 "T" Time (RAYLEIGH "" Derived) "Period" = "2 * pi * sqrt(d_e / g_f)";
    T_R "T_r" Time (ASCE_7 "13.3: rigid up to 0.06 s" Memory) "Longest period of a rigid component": Condition;
    U_T "u" Utilisation (ASCE_7 "13.3" Memory) "Period over that of a rigid component: above 1 it counts as flexible" = "T / T_r";
    C_H "c" Number (STATICS "" Derived) "Push over the weight, the largest of the load cases for the cabinet itself": Given;
    D_TOP "d_t" Length (STATICS "" Derived) "Movement of the top under its own weight laid sideways": Solved;
    THETA "theta" Number (STATICS "weight that leans" Derived) "Weight over the stiffness times the height" = "d_t / h_f";
    U_E "u_e" Length (STATICS "" Derived) "Movement of the top under the push" = "c * d_t / (1 - theta)";
    R_F "R" Number (INPUT "structure" Derived) "Factor from the movement under the reduced push to the real one": Given;
    U_R "u_r" Length (ASCE_7 "no factor for components is given; the response factor is taken back" Derived) "Real movement of the top" = "R * u_e";
    U_N "u_n" Length (INPUT "structure" Derived) "Movement of the neighbour at the same height": Given;
    GAP "s" Length (INPUT "structure" Derived) "Gap to the neighbour": Given;
    S_MIN "s_min" Length (STATICS "both may move towards each other" Derived) "Gap that is needed" = "u_r + u_n";
    U_GAP "u" Utilisation (STATICS "" Derived) "Gap needed over gap" = "s_min / s";
    SLACK "l_s" Length (INPUT "structure" Derived) "Slack of bars, cables and hoses to the neighbour": Given;
    SPARE "l_0" Length (PRACTICE "" Memory) "Slack kept in reserve": Condition;
    L_MIN "l_min" Length (STATICS "" Derived) "Slack that is needed" = "u_r + u_n + l_0";
    U_SLACK "u" Utilisation (STATICS "" Derived) "Slack needed over slack" = "l_min / l_s";
    M "m" Mass (STATICS "" Derived) "Mass of this state": Given;
    V_S "V" Force (STATICS "the whole mass over the lowest storey" Derived) "Push that the lowest storey carries" = "c * m * g";
    N_D "N" Force (STATICS "one diagonal a face works" Derived) "Force in a brace of the lowest storey" = "V / (n_f * cos_d)";
    F_Y "F_y" Stress (INPUT "structure" Derived) "Yield strength": Given;
    F_U "F_u" Stress (INPUT "structure" Derived) "Tensile strength": Given;
    A_N "A_e" Area (INPUT "structure" Derived) "Area of a brace through its holes, with the shear lag of its ends": Given;
    R_GROSS "R_y" Force (AISC_360 "D2(a), phi 0.90" Memory) "Strength of the whole section in tension" = "0.9 * F_y * A_d";
    R_NET "R_u" Force (AISC_360 "D2(b), phi 0.75" Memory) "Strength of the section through the holes" = "0.75 * F_u * A_e";
    R_GROSS_A "R_y" Force (AISC_360 "D2(a), Omega 1.67" Memory) "Strength of the whole section in tension" = "F_y * A_d / 1.67";
    R_NET_A "R_u" Force (AISC_360 "D2(b), Omega 2.00" Memory) "Strength of the section through the holes" = "F_u * A_e / 2";
    R_GROSS_E "R_y" Force (EN_1993_1_1 "6.2.3, gamma_M0 1.0" Memory) "Strength of the whole section in tension" = "F_y * A_d / 1";
    R_NET_E "R_u" Force (EN_1993_1_1 "6.2.3, gamma_M2 1.25" Memory) "Strength of the section through the holes" = "0.9 * F_u * A_e / 1.25";
    R_T_MIN "R" Force (STATICS "" Derived) "Strength of a brace in tension" = "min(R_y, R_u)";
    U_BRACE "u" Utilisation (STATICS "" Derived) "Force over strength" = "N / R";
    U_BRACE_C "u_c" Utilisation (STATICS "" Derived) "Force over strength in compression" = "N / R_c";
    RADIUS "i" Length (INPUT "structure" Derived) "Least radius of gyration of a brace": Given;
    SLENDER "lambda" Number (STATICS "" Derived) "Slenderness of a brace" = "L_d / i";
    F_E "F_e" Stress (AISC_360 "E3-4" Memory) "Elastic buckling stress" = "pi^2 * E / lambda^2";
    F_CR "F_cr" Stress (AISC_360 "E3-2, E3-3" Memory) "Critical stress" = "if(F_y <= 2.25 * F_e, 0.658^(F_y / F_e) * F_y, 0.877 * F_e)";
    R_C "R_c" Force (AISC_360 "E3-1, phi 0.90" Memory) "Strength of a brace in compression" = "0.9 * F_cr * A_d";
    R_C_A "R_c" Force (AISC_360 "E3-1, Omega 1.67" Memory) "Strength of a brace in compression" = "F_cr * A_d / 1.67";
    LAMBDA_1 "lambda_1" Number (EN_1993_1_1 "6.3.1.3" Memory) "Slenderness at which elastic buckling meets yielding" = "pi * sqrt(E / F_y)";
    LAMBDA_R "lambda_r" Number (EN_1993_1_1 "6.3.1.2" Memory) "Relative slenderness" = "lambda / lambda_1";
    ALPHA "alpha" Number (EN_1993_1_1 "Table 6.1" Memory) "Imperfection factor of the buckling curve": Table;
    PHI_E "Phi" Number (EN_1993_1_1 "6.3.1.2" Memory) "Auxiliary value" = "0.5 * (1 + alpha * (lambda_r - 0.2) + lambda_r^2)";
    CHI "chi" Number (EN_1993_1_1 "6.3.1.2" Memory) "Reduction for buckling" = "min(1, 1 / (Phi + sqrt(Phi^2 - lambda_r^2)))";
    R_C_E "R_c" Force (EN_1993_1_1 "6.3.1.1, gamma_M1 1.0" Memory) "Strength of a brace in compression" = "chi * F_y * A_d / 1";
    M_C "m_c" Mass (INPUT "contents" Derived) "Heaviest content on rails": Given;
    F_V "f_v" Number (STATICS "" Derived) "Largest downward action over its weight, of the load cases for the cabinet itself": Given;
    M_V "m_v" Mass (STATICS "" Derived) "Mass that its rails feel" = "m_c * f_v";
    M_RAIL "m_r" Mass (INPUT "structure" Derived) "Rating of a pair of rails": Given;
    U_RAIL "u" Utilisation (STATICS "" Derived) "Mass felt over rating" = "m_v / m_r";
    F_H "F_h" Force (STATICS "" Derived) "Push that would slide it out" = "c * m_c * g";
    F_RET "F_r" Force (INPUT "structure" Derived) "Force at which its latch lets go": Given;
    U_RET "u" Utilisation (STATICS "" Derived) "Push over what the latch holds" = "F_h / F_r";
    NOT_WHOLE "" Number (INPUT "structure" Derived) "storeys, posts, faces and bolts are counted in whole numbers": Reason;
    NO_DEMAND "" Number (INPUT "site" Derived) "without a seismic rule there is no push": Reason;
    NO_SECTION "" Number (INPUT "structure" Derived) "a number that this system needs is not given: beams and corners of portal frames, area of braces and posts, or the thickness of skins": Reason;
    NO_CORNER "" Number (INPUT "structure" Derived) "the stiffness of the corners is not given and they are not said to be rigid (corner_stiffness_nmm, corners); a test or the maker tells": Reason;
    NO_FEET "" Number (INPUT "cabinet.feet" Derived) "without feet there is no base to turn on": Reason;
    NO_FACTOR "" Number (INPUT "structure" Derived) "the factor from the reduced push to the real movement is not given": Reason;
    NO_YIELD "" Number (INPUT "structure" Derived) "yield strength, tensile strength or the area through the holes is not given (yield_mpa, tensile_mpa, brace_net_area_mm2)": Reason;
    NO_RADIUS "" Number (INPUT "structure" Derived) "a single brace must take compression, too, and its radius of gyration is not given (brace_radius_mm)": Reason;
    NO_BRACES "" Number (INPUT "structure" Derived) "no side is braced": Reason;
    OTHER_FORMAT "" Number (INPUT "structure" Derived) "EN 1993 goes with demands of limit states, AISC 360 with strength design or allowable stress: choose the standard that fits the demand": Reason;
    NOT_ASKED "" Number (INPUT "structure" Derived) "not asked: no number for it is given": Reason;
    UNSTABLE "" Number (STATICS "" Derived) "its own weight pushes it over: the frame is softer than the weight that leans on it": Reason;
}
