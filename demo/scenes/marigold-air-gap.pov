// The pickup and one tooth of the reluctor, a brass gauge blade in the gap between them.
#include "workshop.inc"

#declare Plate = texture {
  pigment {
    bozo turbulence 0.8 octaves 6
    color_map { [0 color rgb <0.42, 0.40, 0.35>] [0.6 color rgb <0.55, 0.53, 0.47>] [1 color rgb <0.35, 0.30, 0.24>] }
    scale 2.5
  }
  normal { granite 0.06 scale 0.4 }
  finish { diffuse 0.6 specular 0.3 roughness 0.06 metallic reflection 0.05 }
}

#declare Reluctor = difference {
  union {
    cylinder { <0, 0, 0>, <0, 1.5, 0>, 1.55 }
    #for (I, 0, 5)
      prism {
        linear_sweep linear_spline 0.25, 1.25, 5,
        <-0.55, 0>, <0.55, 0>, <0.20, 2.75>, <-0.20, 2.75>, <-0.55, 0>
        rotate y * (I * 60)
      }
    #end
    torus { 1.45, 0.10 translate y * 1.5 }
  }
  cylinder { <0, -1, 0>, <0, 3, 0>, 0.8 }
  texture { M_Steel }
}

Workshop_Light(<0, 1, 2>, 13)
Photo_Camera(<4.9, 10.4, -5.6>, <0.2, 0.9, 1.9>, 38)

difference {
  cylinder { <0, -0.4, 0>, <0, 0, 0>, 6.4 }
  cylinder { <4.6, -1, 1.5>, <4.6, 1, 1.5>, 0.35 }
  texture { Plate translate Wear * 3 }
}
difference {
  cylinder { <0, -3, 0>, <0, 1.2, 0>, 7.3 }
  cylinder { <0, -4, 0>, <0, 2, 0>, 6.6 }
  texture { M_Aluminium }
}
object { Reluctor translate y * 0.25 }
cylinder { <0, 0, 0>, <0, 2.3, 0>, 0.79 texture { M_Steel } }

// Pickup: core, coil, moulding, screw and lead.
union {
  object { Soft_Box(<0.28, 0.75, 0.55>, 0.10) translate <0, 0.95, 3.42> texture { M_Steel } }
  object { Soft_Box(<1.25, 0.85, 0.75>, 0.2) translate <0, 0.95, 4.65> texture { M_Phenolic_Black } texture { M_Dust } }
  object { Soft_Box(<1.9, 0.16, 0.55>, 0.2) translate <0, 0.16, 4.9> texture { M_Steel } }
  union {
    difference { sphere { 0, 0.36 scale <1, 0.55, 1> } box { <-0.06, 0.05, -1>, <0.06, 1, 1> rotate y * 20 } }
    texture { M_Steel } translate <1.55, 0.32, 4.9>
  }
  sphere_sweep {
    b_spline 6,
    <-1.0, 0.9, 4.7>, 0.13, <-1.4, 0.8, 4.7>, 0.13, <-2.6, 0.35, 4.4>, 0.13, <-4.0, 0.2, 3.0>, 0.13,
    <-5.4, 0.2, 0.8>, 0.13, <-6.2, 0.2, -1.0>, 0.13
    tolerance 0.001
    pigment { color rgb <0.36, 0.30, 0.05> } finish { diffuse 0.7 specular 0.2 }
  }
}
// Gauge blade, which lies elsewhere at every second sight.
#if (mod(Wear, 2) = 0)
union {
  box { <-0.65, -0.35, -0.03>, <0.65, 5.2, 0.03> }
  texture { M_Brass }
  translate <0, 0.6, 2.94>
  rotate z * 0
}
#end
