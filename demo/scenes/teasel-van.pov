// Teasel: a small van of the sixties with a stub nose, brown below and cream above, of no particular make.
#include "workshop.inc"
#include "car.inc"

#declare Brown = rgb <0.145, 0.060, 0.030>;
#declare Cream = rgb <0.74, 0.66, 0.48>;

// Load space and cab: upright at the back, the screen leaning in over the nose.
#declare Box = function (x, y, z) {
  Block(
    (x + 0.42 + 0.17 * max(0, y - 1.05)) / (1.78 - 0.17 * max(0, y - 1.05)),
    (y - 1.13) / 0.86,
    z / (0.86 - 0.085 * max(0, y - 1.0)), 9)
}
// Nose: lower, rounder.
#declare Nose = function (x, y, z) {
  Block((x - 1.0) / 1.12, (y - 0.72 + 0.06 * (x - 1.0)) / 0.42, z / (0.83 - 0.05 * max(0, x - 1.2)), 4.5)
}

#declare Arches = union {
  cylinder { <1.28, 0.34, -2>, <1.28, 0.34, 2>, 0.385 }
  cylinder { <-1.32, 0.34, -2>, <-1.32, 0.34, 2>, 0.385 }
}
#declare Box_Skin = object { Skin(Box, <-2.4, 0.2, -0.95>, <1.6, 2.05, 0.95>) }
#declare Nose_Skin = object { Skin(Nose, <-0.3, 0.2, -0.95>, <2.3, 1.25, 0.95>) }

#declare Openings = union {
  // Door window with a rounded rear corner, quarter light ahead of it.
  prism { linear_spline -1, 1, 5, <0.06, 1.16>, <0.80, 1.16>, <0.70, 1.66>, <0.06, 1.66>, <0.06, 1.16> rotate x * -90 }
  prism { linear_spline -1, 1, 4, <0.85, 1.16>, <1.09, 1.16>, <0.77, 1.62>, <0.85, 1.16> rotate x * -90 }
  // Screen.
  prism { linear_spline 0, 3, 5, <-0.70, 1.20>, <0.70, 1.20>, <0.63, 1.70>, <-0.63, 1.70>, <-0.70, 1.20> rotate x * -90 rotate y * -90 }
}

#declare Two_Tone = texture {
  pigment {
    gradient y
    color_map { [0 color Brown] [0.555 color Brown] [0.555 color Cream] [1 color Cream] }
    scale 2
  }
  finish { diffuse 0.72 specular 0.5 roughness 0.006 reflection { 0.04, 0.38 fresnel on } conserve_energy }
}

#declare Chrome_Bumper = union {
  object { superellipsoid { <0.4, 0.4> scale <0.05, 0.065, 0.82> } }
  #for (I, 0, 1) object { superellipsoid { <0.4, 0.4> scale <0.15, 0.06, 0.045> } translate <-0.10, 0, -0.80 + 1.60 * I> } #end
  texture { M_Chrome }
}

#declare Cream_Rim = texture { pigment { color Cream * 0.95 } finish { diffuse 0.7 specular 0.35 roughness 0.02 reflection 0.03 } }

#macro Axle(X)
  object { Wheel(0.325, Cream_Rim) translate <X, 0.325, -0.74> }
  object { Wheel(0.325, Cream_Rim) rotate y * 180 translate <X, 0.325, 0.74> }
#end

union {
  difference {
    union { object { Box_Skin } object { Nose_Skin } }
    object { Arches }
    box { <-3, 0, -2>, <3, 0.32, 2> }
    texture { Two_Tone }
    interior { ior 1.45 }
  }
  intersection {
    object { Box_Skin translate y * -1.13 scale <1.004, 1, 1.006> translate y * 1.13 }
    object { Openings }
    texture { M_Glass }
    interior { ior 1.5 }
  }
  // Rubber round the screen.
  intersection {
    object { Box_Skin translate y * -1.13 scale <1.0025, 1, 1.003> translate y * 1.13 }
    object { Openings translate y * -1.42 scale <1, 1.06, 1.03> translate y * 1.42 }
    texture { M_Rubber }
  }
  // Shut lines: cab door, side door, bonnet; and the strip where the colours meet.
  intersection {
    union { object { Box_Skin } object { Nose_Skin } scale <1.0, 1.0, 1.0035> }
    union {
      box { <-0.01, 0.40, -2>, <-0.003, 1.74, 2> }
      box { <-0.12, 0.40, -2>, <-0.113, 1.80, 2> }
      box { <-1.10, 0.40, -2>, <-1.093, 1.80, 2> }
      box { <-1.10, 1.793, -2>, <-0.113, 1.80, 2> }
      box { <0.885, 0.72, -2>, <0.892, 1.14, 2> }
    }
    texture { M_Shut_Line }
  }
  intersection {
    union { object { Box_Skin } object { Nose_Skin } scale <1.004, 1.0, 1.010> }
    box { <-3, 1.098, -2>, <1.30, 1.122, 2> }
    texture { M_Chrome }
  }
  box { <-2.0, 0.32, -0.70>, <1.9, 0.9, 0.70> pigment { color rgb 0.012 } finish { diffuse 0.4 } }
  Axle(1.28)
  Axle(-1.32)
  object { Chrome_Bumper translate <2.16, 0.45, 0> }
  object { Chrome_Bumper scale <-1, 1, 1> translate <-2.24, 0.45, 0> }
  // Face: an oval grille, two lamps, two small ones under them.
  object { superellipsoid { <1, 0.35> scale <0.42, 0.13, 0.06> rotate y * 90 translate <2.065, 0.74, 0> } texture { pigment { color rgb 0.015 } finish { specular 0.2 } } }
  #for (I, 0, 4)
    object { superellipsoid { <0.3, 0.3> scale <0.05, 0.008, 0.36 - 0.05 * abs(I - 2)> } translate <2.092, 0.65 + I * 0.045, 0> texture { M_Chrome } }
  #end
  #for (I, 0, 1)
    object { Round_Lamp(0.105) translate <2.075, 0.82, -0.585 + 1.17 * I> }
    object { Round_Lamp(0.045) translate <2.085, 0.60, -0.60 + 1.20 * I> }
  #end
  object { Name_Plate("TEASEL") scale <1, 1, 0.8> translate <2.225, 0.45, 0> }
  object { superellipsoid { <0.3, 0.3> scale <0.075, 0.012, 0.018> } translate <0.10, 1.02, -0.872> texture { M_Chrome } }
  object { superellipsoid { <0.3, 0.3> scale <0.075, 0.012, 0.018> } translate <-0.98, 1.02, -0.872> texture { M_Chrome } }
  // Mirror on a stalk, wipers.
  object { superellipsoid { <0.6, 0.6> scale <0.03, 0.085, 0.065> } translate <1.06, 1.36, -1.02> texture { M_Chrome } }
  cylinder { <1.02, 1.12, -0.84>, <1.06, 1.34, -1.01>, 0.011 texture { M_Chrome } }
  cylinder { <1.36, 1.20, 0.08>, <1.29, 1.45, -0.34>, 0.009 texture { M_Rubber } }
  cylinder { <1.36, 1.20, 0.62>, <1.29, 1.45, 0.22>, 0.009 texture { M_Rubber } }
}

Daylight()
union { Yard() scale <-1, 1, 1> translate x * -0.8 }
Photo_Camera(<5.9, 1.65, -4.9>, <-0.05, 0.92, 0.1>, 34)
