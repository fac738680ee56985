// Teasel's plug 3: dry soot over nose, electrodes and the end of the shell; its neighbour beside it is tan.
#include "workshop.inc"
#include "plug.inc"

#declare Soot = texture {
  pigment {
    bozo turbulence 0.7 octaves 6
    color_map { [0 color rgb 0.010] [0.6 color rgb 0.022] [1 color rgb <0.06, 0.055, 0.05>] }
    scale 0.25
  }
  normal { granite 0.7 scale 0.2 }
  finish { diffuse 0.55 specular 0.03 }
}

#declare Sooted_Shell = texture {
  pigment {
    gradient x turbulence 0.12 octaves 5
    color_map {
      [0.00 color rgb <0.42, 0.41, 0.40>]
      [0.45 color rgb <0.36, 0.34, 0.32>]
      [0.72 color rgb <0.10, 0.09, 0.085>]
      [0.90 color rgb <0.02, 0.019, 0.018>]
      [1.00 color rgb <0.02, 0.019, 0.018>]
    }
    scale 5.2 translate x * -2.6
  }
  normal { bumps 0.12 scale 0.06 }
  finish { diffuse 0.45 specular 0.35 roughness 0.05 metallic reflection 0.05 }
}

#declare Tan_Nose = texture {
  pigment {
    bozo turbulence 0.5
    color_map { [0 color rgb <0.50, 0.33, 0.20>] [1 color rgb <0.66, 0.50, 0.35>] }
    scale 0.3
  }
  normal { granite 0.15 scale 0.2 }
  finish { diffuse 0.8 specular 0.05 }
}

#declare Used_Electrode = texture {
  pigment {
    bozo turbulence 0.6
    color_map { [0 color rgb <0.24, 0.20, 0.18>] [1 color rgb <0.42, 0.38, 0.34>] }
    scale 0.25
  }
  normal { granite 0.25 scale 0.2 }
  finish { diffuse 0.5 specular 0.25 roughness 0.06 metallic reflection 0.05 }
}

Workshop_Light(<1, 1, 0>, 11)
Photo_Camera(<9.6, 6.0, -6.2>, <0.8, 0.8, 0.9>, 30)
object { Bench_Wood rotate y * -20 }
object { Rag(rgb <0.55, 0.55, 0.52>) scale <26, 1.6, 22> rotate y * 10 translate <-4, 0.55, 3> }
// Cleaned at every second sight.
#if (mod(Wear, 2) = 1)
  #declare Front_Nose = texture { Tan_Nose translate y * Wear }
  #declare Front_Electrode = texture { Used_Electrode translate y * Wear }
#else
  #declare Front_Nose = texture { Soot translate y * Wear }
  #declare Front_Electrode = texture { Soot translate y * Wear }
#end
object { Spark_Plug(Front_Nose, Front_Electrode, Sooted_Shell) rotate x * -25 rotate y * 8 translate <0, 1.5, -0.3> }
object { Spark_Plug(Tan_Nose, Used_Electrode, M_Steel) rotate x * -40 rotate y * 14 translate <-0.6, 1.5, 3.1> }
