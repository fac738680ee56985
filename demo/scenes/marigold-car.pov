// Marigold: a saloon of the early seventies as one might remember one, of no particular make.
#include "workshop.inc"
#include "car.inc"

#declare Paint = rgb <0.78, 0.33, 0.025>;

// Lower body: bonnet, flanks and boot in one, a little lower at both ends.
#declare Lower = function (x, y, z) {
  Block(x / 2.24, (y - 0.63 + 0.020 * x * x - 0.012 * x) / 0.335, z / (0.845 - 0.012 * x * x), 7)
}
// Roof and pillars: leans in towards the top, more in front than behind.
#declare Upper = function (x, y, z) {
  Block(
    (x + 0.30 + 0.10 * (y - 0.9)) / (1.36 - 0.98 * (y - 0.9)), (y - 0.95) / 0.45, z / (0.775 - 0.30 * (y - 0.9)), 9)
}

#declare Arches = union {
  cylinder { <1.36, 0.34, -2>, <1.36, 0.34, 2>, 0.375 }
  cylinder { <-1.32, 0.34, -2>, <-1.32, 0.34, 2>, 0.375 }
}

#macro Window(X0, X1, X2, X3) // Side window: bottom from X0 to X1, top from X2 to X3.
  prism { linear_spline -1, 1, 5, <X0, 0.955>, <X1, 0.955>, <X2, 1.305>, <X3, 1.305>, <X0, 0.955> rotate x * -90 }
#end

#declare Openings = union {
  Window(-0.33, 0.80, 0.44, -0.33)
  Window(-1.22, -0.40, -0.40, -0.98)
  // Screens, front and rear.
  prism { linear_spline -3, 3, 5, <-0.66, 0.985>, <0.66, 0.985>, <0.56, 1.31>, <-0.56, 1.31>, <-0.66, 0.985> rotate x * -90 rotate y * 90 }
}

#declare Body = union {
  difference {
    object { Skin(Lower, <-2.4, 0.2, -0.95>, <2.4, 1.1, 0.95>) }
    object { Arches }
    box { <-3, 0, -2>, <3, 0.30, 2> }
    Car_Paint(Paint)
  }
  object { Skin(Upper, <-2.2, 0.85, -0.9>, <1.5, 1.45, 0.9>) Car_Paint(Paint) }
  // Glass, a hair proud of the skin.
  intersection {
    object { Skin(Upper, <-2.2, 0.85, -0.9>, <1.5, 1.45, 0.9>) translate y * -0.95 scale <1.004, 1.0, 1.006> translate y * 0.95 }
    object { Openings }
    texture { M_Glass }
    interior { ior 1.5 }
  }
  // Shut lines and the crease along the flank.
  intersection {
    object { Skin(Lower, <-2.4, 0.2, -0.95>, <2.4, 1.1, 0.95>) scale <1.0, 1.001, 1.0035> }
    union {
      #for (I, 0, 2) box { <0.86 - I * 1.18 - (I = 2) * 0.02, 0.36, -2>, <0.867 - I * 1.18 - (I = 2) * 0.02, 0.95, 2> } #end
      box { <0.90, 0.9, -0.66>, <0.908, 1.2, 0.66> }
      box { <0.9, 0.93, -0.665>, <2.1, 1.2, -0.658> }
      box { <0.9, 0.93, 0.658>, <2.1, 1.2, 0.665> }
    }
    texture { M_Shut_Line }
  }
  intersection {
    object { Skin(Lower, <-2.4, 0.2, -0.95>, <2.4, 1.1, 0.95>) scale <1.0, 1.0, 1.010> }
    difference { box { <-2.15, 0.735, -2>, <2.15, 0.757, 2> } box { <-3, 0, -0.5>, <3, 2, 0.5> } object { Arches } }
    texture { M_Chrome }
  }
}

#declare Dark_Inside = box { <-2.0, 0.30, -0.70>, <2.0, 0.82, 0.70> pigment { color rgb 0.012 } finish { diffuse 0.4 } }

#declare Steel_Rim = texture { pigment { color rgb <0.60, 0.60, 0.58> } finish { diffuse 0.6 specular 0.4 roughness 0.03 reflection 0.05 } }

#macro Axle(X)
  object { Wheel(0.315, Steel_Rim) translate <X, 0.315, -0.735> }
  object { Wheel(0.315, Steel_Rim) rotate y * 180 translate <X, 0.315, 0.735> }
#end

#macro Bumper(X)
  union {
    object { superellipsoid { <0.35, 0.35> scale <0.055, 0.070, 0.80> } }
    #for (I, 0, 1) object { superellipsoid { <0.4, 0.4> scale <0.05, 0.10, 0.035> } translate <0.03 * (X > 0) - 0.03 * (X < 0), 0, -0.35 + 0.7 * I> } #end
    #for (I, 0, 1) object { superellipsoid { <0.35, 0.35> scale <0.20, 0.065, 0.05> } translate <-0.12 * X / abs(X), 0, -0.78 + 1.56 * I> } #end
    texture { M_Chrome }
    translate <X, 0.46, 0>
  }
#end

union {
  object { Body }
  object { Dark_Inside }
  Axle(1.36)
  Axle(-1.32)
  Bumper(2.30)
  Bumper(-2.26)
  // Face.
  object { superellipsoid { <0.2, 0.2> scale <0.05, 0.105, 0.715> } translate <2.215, 0.68, 0> texture { pigment { color rgb 0.02 } finish { specular 0.2 } } }
  #for (I, 0, 5) object { superellipsoid { <0.3, 0.3> scale <0.055, 0.007, 0.40> } translate <2.222, 0.605 + I * 0.030, 0> texture { M_Chrome } } #end
  #for (I, 0, 1)
    object { Round_Lamp(0.088) translate <2.262, 0.68, -0.585 + 1.17 * I> }
    object { Round_Lamp(0.075) translate <2.262, 0.68, -0.40 + 0.80 * I> }
    object { superellipsoid { <0.3, 0.3> scale <0.03, 0.03, 0.11> } translate <2.235, 0.545, -0.58 + 1.16 * I> pigment { color rgb <0.80, 0.30, 0.03> } finish { diffuse 0.7 specular 0.6 roughness 0.01 } }
  #end
  object { Name_Plate("MARIGOLD") translate <2.362, 0.46, 0> }
  // Door handles, mirrors, wipers.
  #for (I, 0, 1)
    object { superellipsoid { <0.3, 0.3> scale <0.075, 0.012, 0.016> } translate <-0.16 - I * 1.10, 0.83, -0.853> texture { M_Chrome } }
  #end
  object { superellipsoid { <0.4, 0.4> scale <0.035, 0.055, 0.085> } translate <0.74, 1.02, -0.93> texture { M_Chrome } }
  cylinder { <0.74, 0.97, -0.80>, <0.74, 0.99, -0.90>, 0.012 texture { M_Chrome } }
  cylinder { <1.02, 0.975, 0.05>, <0.86, 1.10, -0.42>, 0.008 texture { M_Rubber } }
  cylinder { <1.02, 0.975, 0.55>, <0.86, 1.10, 0.10>, 0.008 texture { M_Rubber } }

}

Daylight()
Yard()
Photo_Camera(<5.6, 1.75, -5.4>, <0.16, 0.66, 0.1>, 33)
