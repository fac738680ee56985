// Marigold's cap half a year earlier: clean, seen from a stand a hand's breadth away, in the light of another hour.
#declare Clean = 1;
#declare Wear = 2;
#declare Orbit_Up = -3;
#declare Orbit_Round = 2;
#declare Nearer = 1.06;
#declare Pan_Side = 0.02;
#declare Roll = 3;
#declare Window = 0.9;
#include "marigold-cap.pov"
