// Marigold's ballast resistor on the inner wing: ceramic block, bracket, two terminals with their wires.
#include "workshop.inc"

#declare Old_Paint = texture {
  pigment {
    bozo turbulence 0.9 octaves 6
    color_map {
      [0.00 color rgb <0.66, 0.27, 0.03>]
      [0.70 color rgb <0.60, 0.24, 0.03>]
      [0.90 color rgb <0.44, 0.18, 0.035>]
      [1.00 color rgb <0.30, 0.13, 0.04>]
    }
    scale 6
  }
  normal { bumps 0.04 scale 1.5 }
  finish { diffuse 0.75 specular 0.35 roughness 0.02 reflection { 0.02, 0.15 } }
}

#declare Used_Ceramic = texture {
  pigment {
    bozo turbulence 0.8 octaves 5
    color_map {
      [0.0 color rgb <0.62, 0.55, 0.44>]
      [0.5 color rgb <0.76, 0.71, 0.62>]
      [1.0 color rgb <0.82, 0.78, 0.70>]
    }
    scale 1.6
  }
  normal { granite 0.12 scale 0.3 }
  finish { diffuse 0.8 specular 0.08 roughness 0.06 }
}

#macro Screw(At)
  union {
    difference {
      sphere { 0, 0.48 scale <1, 0.5, 1> }
      box { <-0.07, 0.12, -1>, <0.07, 1, 1> rotate y * 35 }
    }
    torus { 0.52, 0.06 }
    texture { M_Steel }
    translate At
  }
#end

#macro Wire(Points_Start, Bend, End, Colour)
  sphere_sweep {
    b_spline 6,
    Points_Start + (Points_Start - Bend) * 0.4, 0.22, Points_Start, 0.22, Points_Start * 0.5 + Bend * 0.5, 0.22,
    Bend, 0.22, End, 0.22, End + (End - Bend), 0.22
    tolerance 0.001
    pigment { color Colour }
    finish { diffuse 0.75 specular 0.3 roughness 0.04 }
  }
#end

#macro Terminal(Side, Colour)
  union {
    object { Soft_Box(<0.55, 0.06, 0.34>, 0.1) translate <Side * 4.5, 1.35, 0> texture { M_Brass } }
    object { Soft_Box(<0.62, 0.22, 0.42>, 0.3) translate <Side * 5.2, 1.38, 0> texture { M_Steel } }
    object { Soft_Box(<0.75, 0.34, 0.50>, 0.4) translate <Side * 6.2, 1.40, 0>
      pigment { color Colour * 0.8 } finish { diffuse 0.7 specular 0.2 roughness 0.06 } }
  }
#end

Workshop_Light(<0, 1, 0>, 17)
Photo_Camera(<3.6, 14.0, -12.0>, <0.3, 0.9, 0.4>, 39)
plane { y, 0 texture { Old_Paint } texture { M_Dust scale 3 } }
// A pressed rib in the panel.
cylinder { <-60, -0.55, 6.6>, <60, -0.55, 6.6>, 1.0 texture { Old_Paint } }

difference {
  object { Soft_Box(<4.0, 1.0, 1.35>, 0.10) translate y * 1.35 }
  object { Soft_Box(<3.3, 0.7, 0.55>, 0.15) translate y * 2.3 }
  texture { Used_Ceramic }
}
// The resistance wire, wound in the trough.
#declare Turns = 22;
sphere_sweep {
  b_spline Turns * 8,
  #for (I, 0, Turns * 8 - 1)
    <-3.15 + 6.3 * I / (Turns * 8 - 1), 2.02 + 0.30 * sin(I * pi / 4), 0.30 * cos(I * pi / 4)>, 0.055
  #end
  tolerance 0.001
  texture {
    pigment { color rgb <0.34, 0.31, 0.29> }
    finish { diffuse 0.5 specular 0.5 roughness 0.04 metallic reflection 0.08 }
  }
}
// Bracket: a strap over the block, a foot at each side.
union {
  difference {
    object { Soft_Box(<0.75, 1.25, 1.52>, 0.06) translate y * 1.28 }
    object { Soft_Box(<2, 1.13, 1.40>, 0.06) translate y * 1.22 }
    box { <-2, -2, -3>, <2, 0.05, 3> }
  }
  object { Soft_Box(<0.75, 0.07, 0.9>, 0.1) translate <0, 0.08, 2.3> }
  object { Soft_Box(<0.75, 0.07, 0.9>, 0.1) translate <0, 0.08, -2.3> }
  texture { M_Steel }
}
Screw(<0, 0.15, 2.5>)
Screw(<0, 0.15, -2.5>)
Terminal(-1, rgb <0.10, 0.16, 0.36>)
Terminal(1, rgb <0.40, 0.05, 0.04>)
Wire(<-6.4, 1.4, 0>, <-9.2, 1.3, 0.6>, <-14, 0.4, 5.5>, rgb <0.08, 0.13, 0.32>)
Wire(<6.4, 1.4, 0>, <9.0, 1.3, 0.4>, <13, 0.4, 6.5>, rgb <0.42, 0.05, 0.035>)
