// Marigold's leads laid out by number; number 4 chafed near its boot.
#include "workshop.inc"

#declare Lead_Cover = texture {
  pigment {
    bozo turbulence 0.6
    color_map { [0 color rgb <0.030, 0.036, 0.052>] [1 color rgb <0.046, 0.053, 0.072>] }
    scale 1.2
  }
  normal { bumps 0.04 scale 0.08 }
  finish { diffuse 0.75 specular 0.35 roughness 0.035 }
}

// Where the cover is rubbed through the glass-fibre braid shows.
#macro Chafed_Cover(Centre, Length)
  texture {
    pigment {
      function { min(1, sqrt(x * x + z * z) + 0.28 * f_noise3d(x * 6, y * 6, z * 6)) }
      color_map {
        [0.00 color rgb <0.63, 0.55, 0.42>]
        [0.45 color rgb <0.55, 0.47, 0.35>]
        [0.58 color rgb <0.20, 0.18, 0.17>]
        [0.75 color rgb <0.075, 0.08, 0.095>]
        [1.00 color rgb <0.036, 0.042, 0.058>]
      }
      scale <Length, 1, 0.62>
      translate Centre
    }
    normal { granite 0.5 scale 0.12 }
    finish { diffuse 0.75 specular 0.12 roughness 0.06 }
  }
#end

#macro Boot()
  union {
    cylinder { <0, 0, 0>, <1.7, 0, 0>, 0.58 }
    torus { 0.58, 0.10 rotate z * 90 translate x * 1.7 }
    torus { 0.56, 0.09 rotate z * 90 translate x * 1.2 }
    cone { <-1.3, 0, 0>, 0.40, <0, 0, 0>, 0.58 }
    texture { M_Rubber }
  }
#end

#macro Tag(Number)
  union {
    object { Soft_Box(<0.75, 0.015, 0.55>, 0.15) texture {
      pigment { color rgb <0.78, 0.70, 0.52> }
      normal { granite 0.1 scale 0.2 }
      finish { diffuse 0.8 } } }
    text {
      internal 3 str(Number, 0, 0) 0.02, 0
      pigment { color rgb 0.04 }
      rotate x * 90 scale <0.95, 1, 0.95> translate <-0.22, 0.03, -0.30>
    }
    torus { 0.12, 0.03 translate <-0.6, 0.02, 0> texture { M_Brass } }
  }
#end

#macro Lead(Z, Sway, Number, Is_Chafed)
  sphere_sweep {
    b_spline 8,
    <-24, 0.36, Z + 3 * Sway>, 0.36, <-18, 0.36, Z + 2 * Sway>, 0.36, <-12, 0.36, Z - Sway>, 0.36,
    <-7, 0.36, Z - 0.8 * Sway>, 0.36, <-2.5, 0.36, Z + 0.5 * Sway>, 0.36, <1.5, 0.40, Z + 0.2 * Sway>, 0.36,
    <5.0, 0.58, Z>, 0.36, <8.5, 0.58, Z>, 0.36
    tolerance 0.0005
    #if (Is_Chafed) Chafed_Cover(<1.6, 0.72, Z + 0.1 * Sway - 0.06>, 2.0) #else texture { Lead_Cover } #end
  }
  object { Boot() translate <5.2, 0.62, Z> }
  object { Tag(Number) rotate y * (Sway * 14 - 6) translate <-3.4, 0.76, Z + 0.55 * Sway> }
#end

Workshop_Light(<0, 1, 2>, 18)
Photo_Camera(<5.0, 13.5, -11.0>, <0.6, 0.4, 0.9>, 37)
object { Bench_Wood rotate y * 8 }
Lead(-2.9, 0.3, 5, 0)
Lead(0.0, -0.5, 4, 1)
Lead(2.9, 0.5, 3, 0)
Lead(5.8, -0.3, 2, 0)
Lead(8.7, 0.6, 1, 0)
