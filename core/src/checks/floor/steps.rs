//! The steps and reasons of floor checks.

use crate::calc::clause::{INPUT, PRACTICE, STATICS};
use crate::calc::steps;
use crate::rules::floor::documents::{ACI_318_19, EN_1992_1_1, TR34};

steps! { 163 "floor checks";
    N_LEG "N" Force (STATICS "base reactions" Derived) "Force of the leg": Given;
    N_FACTORED "P_u" Force (STATICS "factored" Derived) "Factored load of the leg" = "gamma * N";
    N_CASE "P_u" Force (STATICS "load case" Derived) "Load of the leg in the load case, factors in it" = "N";
    N_NEAR "N_n" Force (STATICS "plan" Derived) "Loads of legs nearer than twice the thickness, merged with it": Given;
    N_MERGED "N" Force (STATICS "plan" Derived) "Load of the leg with those merged" = "N + N_n";
    F_R_GIVEN "f_r" Stress (INPUT "floor" Derived) "Flexural strength of the slab": Given;
    F_C "f'_c" Stress (INPUT "slab" Derived) "Specified strength of the concrete": Given;
    K_R "k_r" Empirical { force: 3, length: -6 } (ACI_318_19 "19.2.3.1" Memory) "Coefficient of the modulus of rupture, 0.62 in MPa": Constant;
    F_R "f_r" Stress (ACI_318_19 "19.2.3.1" Memory) "Modulus of rupture, taken because no flexural strength is given" = "k_r * sqrt(f'_c)";
    S_WORKING "sigma_a" Stress (PRACTICE "modulus of rupture over a factor of safety" Memory) "Working stress that is allowed" = "f_r / n_s";
    S_FACTORED "sigma_a" Stress (ACI_318_19 "14.5.2" Memory) "Design strength of plain concrete in bending" = "phi * f_r";
    F_CTK "f_ctk" Stress (INPUT "floor" Derived) "Tensile strength, lower fractile": Given;
    S_LIMIT "sigma_a" Stress (EN_1992_1_1 "12.3.1" Memory) "Design tensile strength of plain concrete" = "0.8 * f_ctk / 1.5";
    S_OWN "sigma_1" Stress (STATICS "" Derived) "Tension under the leg's own load": Given;
    S_MORE "sigma_n" Stress (STATICS "" Derived) "Tension that the other legs add": Given;
    S_ALL "sigma_u" Stress (STATICS "superposition" Derived) "Tension of all legs" = "sigma_1 + sigma_n";
    P_OTHERS "P_o" Force (STATICS "upper bound" Derived) "Loads of the other legs within three radii of relative stiffness": Given;
    P "P" Force (STATICS "" Derived) "Load that the tension belongs to": Given;
    U_STRESS "u" Utilisation (STATICS "" Derived) "Tension over what is allowed" = "sigma_u / sigma_a";
    P_Y "P_y" Force (TR34 "yield lines" Memory) "Load under which yield lines form": Given;
    U_YIELD "u" Utilisation (TR34 "yield lines" Memory) "Factored load over that" = "P_u / P_y";
    V_R "V_r" Force (STATICS "" Derived) "Design strength against punching": Given;
    U_PUNCH "u" Utilisation (STATICS "" Derived) "Factored load over design strength" = "P_u / V_r";
    T_GIVEN "t_p" Length (INPUT "floor" Derived) "Thickness of the foot's plate": Given;
    U_PLATE "u" Utilisation (STATICS "elastic bending: stress grows with the square" Derived) "Bending over strength" = "(t / t_p)^2";
    A_FOOT "A" Area (INPUT "cabinet" Derived) "Area of the foot that counts: all of it on a swivel, the rectangle whose middle is where the force acts where the stem is fixed": Given;
    Q_MEAN "q_m" Pressure (STATICS "" Derived) "Mean pressure under it" = "P_u / A";
    R_D "R_d" Force (STATICS "" Derived) "Bearing strength": Given;
    U_BEAR "u" Utilisation (STATICS "" Derived) "Load over bearing strength" = "P_u / R_d";
    Q_LOAD "q" AreaLoad (STATICS "" Derived) "Load on the area": Given;
    Q_LIVE "q_l" AreaLoad (INPUT "floor" Derived) "Design live load": Given;
    U_AREA "u" Utilisation (STATICS "" Derived) "Load over design live load, both at service" = "q / q_l";
    P_WHEEL "p" Pressure (STATICS "" Derived) "Pressure of the wheel, its highest where Hertz reaches, else its mean": Given;
    P_ALLOWED "p_l" Pressure (PRACTICE "" Secondary) "Pressure that concrete is allowed under it in practice": Given;
    U_WHEEL "u" Utilisation (PRACTICE "" Secondary) "Pressure over what practice allows; very cautious for hard wheels" = "p / p_l";
    NO_SUBGRADE "" Number (INPUT "floor" Derived) "neither modulus of subgrade reaction nor bearing ratio nor class of soil is given: a slab on the ground needs one": Reason;
    NO_TENSILE "" Number (INPUT "floor" Derived) "no tensile strength f_ctk,0.05 is given (tensile_strength_mpa): limit states and yield lines need it": Reason;
    FALLS "" Number (STATICS "" Derived) "at rest the centre of gravity does not stand over the feet, so their forces are not known": Reason;
    POINT "" Number (INPUT "cabinet.feet" Derived) "a foot without size has no area to press with": Reason;
    YIELD_FORMAT "" Number (TR34 "" Memory) "yield lines have partial factors inside, as limit states have; the load cases of the seismic rule are in another format": Reason;
    WEAK_FORMAT "" Number (INPUT "floor" Derived) "punching strengths here are those of strength design and of limit states; the load cases of the seismic rule are in allowable stress": Reason;
}
