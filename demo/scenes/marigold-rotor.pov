// Marigold's rotor, held up to the light on the bench: good.
#include "workshop.inc"
#include "rotor.inc"

Workshop_Light(<1, 2, 0>, 13)
Photo_Camera(<-3.4, 9.5, -10.0>, <0.9, 1.4, 0>, 31)
object { Bench_Mat }
object { Rotor_Arm(M_Phenolic_Black, M_Brass, M_Aluminium, M_Brass) rotate y * -24 }
object { Rag(rgb <0.36, 0.10, 0.08>) scale <16, 2.4, 12> rotate y * 15 translate <7.5, 0.2, 9.5> }
