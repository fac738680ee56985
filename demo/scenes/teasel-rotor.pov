// Teasel's rotor: the tip of the blade burnt away and blackened.
#include "workshop.inc"
#include "rotor.inc"

#declare Burnt_Tip = texture {
  pigment {
    gradient x turbulence 0.35 octaves 5
    color_map {
      [0.00 color rgb <0.52, 0.36, 0.14>]
      [0.25 color rgb <0.30, 0.20, 0.16>]
      [0.45 color rgb <0.16, 0.12, 0.17>]
      [0.70 color rgb <0.03, 0.027, 0.026>]
      [1.00 color rgb <0.02, 0.018, 0.017>]
    }
    scale 0.7 translate x * 2.78
  }
  normal { granite 1.1 scale 0.22 }
  finish { diffuse 0.6 specular 0.25 roughness 0.05 }
}

#declare Stained_Brass = texture {
  pigment {
    bozo turbulence 0.9 octaves 5
    color_map {
      [0.0 color rgb <0.34, 0.23, 0.10>]
      [0.5 color rgb <0.55, 0.39, 0.16>]
      [1.0 color rgb <0.66, 0.48, 0.20>]
    }
    scale 0.6
  }
  normal { wrinkles 0.15 scale 0.15 }
  finish { diffuse 0.45 specular 0.5 roughness 0.05 metallic reflection { 0.05, 0.25 metallic } }
}

Workshop_Light(<1, 2, 0>, 13)
Photo_Camera(<4.2, 10.5, -10.5>, <1.0, 1.5, -0.1>, 31)
object { Bench_Wood rotate y * 35 }
object { Rotor_Arm(M_Phenolic_Brown, texture { Stained_Brass translate Wear * 4 }, texture { Burnt_Tip translate (y + z) * Wear * 4 }, M_Brass) rotate y * 18 }
object { Rag(rgb <0.42, 0.44, 0.47>) scale <15, 2.4, 11> rotate y * -35 translate <-8.5, 0.2, 7.5> }

// The new one, waiting behind.
object {
  Rotor_Arm(M_Phenolic_Black, M_Brass, M_Brass, M_Brass)
  rotate y * 155
  translate <5.2, 0, 5.6>
}
