// Teasel's cap: black, the contact of tower 2 burnt and the wall behind it sooted.
#include "workshop.inc"
#include "cap.inc"

#declare Burnt = texture {
  pigment {
    bozo turbulence 0.8 octaves 6 lambda 2.2
    color_map {
      [0.00 color rgb <0.02, 0.018, 0.016>]
      [0.50 color rgb <0.05, 0.045, 0.042>]
      [0.70 color rgb <0.20, 0.14, 0.10>]
      [0.85 color rgb <0.30, 0.28, 0.34>]
      [1.00 color rgb <0.50, 0.48, 0.46>]
    }
    scale 0.30
  }
  normal { granite 0.8 scale 0.25 }
  finish { diffuse 0.6 specular 0.15 roughness 0.05 }
}

#declare Worn = texture {
  pigment {
    bozo turbulence 0.8 octaves 5
    color_map { [0 color rgb <0.36, 0.34, 0.32>] [0.5 color rgb <0.60, 0.59, 0.57>] [1 color rgb <0.72, 0.71, 0.69>] }
    scale 0.5
  }
  normal { wrinkles 0.25 scale 0.1 }
  finish { diffuse 0.5 specular 0.35 roughness 0.06 metallic reflection { 0.05, 0.2 metallic } }
}

#macro Contact_Texture(N)
  #if (N = 2) texture { Burnt translate Wear * 5 } #else texture { Worn translate Wear * 5 } #end
#end

Workshop_Light(<0, 2, 0>, 16)
Photo_Camera(<-2.4, 20, -7.4>, <0, 1.7, 0.2>, 37)
object { Bench_Wood }
union { Distributor_Cap(M_Phenolic_Black) rotate y * -38 }

// Flakes eaten off the contact, lying on the floor of the cap.
#declare Grain = seed(95 + Wear);
union {
  #for (I, 0, 60)
    #local A = (rand(Grain) - 0.5) * 46;
    #local R = 1.6 + rand(Grain) * 1.5;
    sphere {
      0, 0.02 + rand(Grain) * 0.05 scale <1, 0.5, 1 + rand(Grain)>
      rotate y * rand(Grain) * 180
      translate <0, 0.92, R>
      rotate y * (60 - 38 + A)
    }
  #end
  texture { Burnt }
}

// One of its clips, and a screw, beside it.
union {
  cylinder { <-1.2, 0.12, 0>, <1.2, 0.12, 0>, 0.12 }
  torus { 0.30, 0.12 rotate y * 0 translate <1.45, 0.12, 0> }
  cylinder { <-1.2, 0.12, 0>, <-1.45, 0.9, 0>, 0.12 }
  sphere { <-1.2, 0.12, 0>, 0.12 }
  texture { M_Steel }
  rotate y * 50
  translate <6.4, 0, 1.6>
}
