// Marigold's cap: brown, tower 3 with verdigris.
#ifndef (Clean) #declare Clean = 0; #end      // 1: before anything grew on it
#include "workshop.inc"
#include "cap.inc"

#declare Verdigris = texture {
  pigment {
    bozo turbulence 0.9 octaves 6 lambda 2.3
    color_map {
      [0.00 color rgb <0.62, 0.80, 0.70>]
      [0.35 color rgb <0.30, 0.60, 0.48>]
      [0.60 color rgb <0.18, 0.42, 0.36>]
      [0.75 color rgb <0.45, 0.42, 0.36>]
      [1.00 color rgb <0.75, 0.76, 0.70>]
    }
    scale 0.35
  }
  normal { granite 0.9 scale 0.35 }
  finish { diffuse 0.75 specular 0.05 }
}

#macro Contact_Texture(N)
  #if (N = 3 & !Clean) texture { Verdigris translate Wear * 5 } #else texture { M_Aluminium } #end
#end

Workshop_Light(<0, 2, 0>, 16)
Photo_Camera(<1.6, 21, -6.2>, <0.2, 1.9, 0.1>, 37)
object { Bench_Mat }
union { Distributor_Cap(M_Phenolic_Brown) rotate y * -76 }

#if (!Clean)
// Crust grown out of the contact.
#declare Grain = seed(307 + Wear);
blob {
  threshold 0.5
  #for (I, 0, 70)
    sphere {
      <(rand(Grain) - 0.5) * 0.9, 0.9 + rand(Grain) * 1.7, Cap_Contact_Radius - 0.12 + (rand(Grain) - 0.5) * 0.25>,
      0.10 + rand(Grain) * 0.12, 1
    }
  #end
  texture { Verdigris }
  rotate y * (2 * 60 - 76)
}
#end

object { Rag(rgb <0.36, 0.10, 0.08>) scale <16, 3, 12> rotate y * 24 translate <11.5, 0.3, 7.5> }
