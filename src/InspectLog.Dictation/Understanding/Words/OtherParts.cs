namespace InspectLog.Dictation.Understanding.Words;

/// <summary>Parts of a car or a workshop that no ignition check is about, though their names may end in a word that
/// one uses: the radiator cap, the jump lead, the brake rotor, the drain plug. And things that are numbered as cylinders
/// are: bay two, drawer three.</summary>
internal static class OtherParts
{
    public static IEnumerable<string> All => Names.Split('|').Select(name => name.Trim())
        .Concat(Countable.Split('|').SelectMany(name => new[] { name, name + "s" }));

    /// <summary>Of these there can be several: "two of the bolts are rusty".</summary>
    private const string Countable =
        "bolt|nut|screw|stud|washer|bracket|clamp screw|gasket|bearing|bush|pulley|mounting|air filter|oil filter|fuel filter|rocker cover|"
        + "hose|belt|fan belt|heater hose|bulb|fuse|tyre|wheel|spanner|socket|door|window|wiper|pen|mirror|bumper|hinge|hub|sill|bench|tool";

    private const string Names =
        "he|he's|someone|somebody|the boss|owner|customer|the lad|my mate|the driver|apprentice|nobody|everybody|everyone|"
        + "radiator cap|hub cap|hubcap|oil cap|filler cap|fuel cap|petrol cap|dust cap|valve cap|bottle cap|oil filler cap|"
        + "expansion cap|tank cap|baseball cap|tyre cap|jump lead|jump leads|test lead|test leads|meter lead|"
        + "meter leads|battery lead|extension lead|earth lead|inspection lead|mains lead|dog lead|lamp lead|"
        + "brake rotor|brake rotors|drain plug|sump plug|mains plug|glow plug|core plug|bath plug|wall plug|"
        + "ear plugs|door gap|panel gap|bonnet gap|valve gap|tappet gap|ring gap|shut gap|points gap|valve timing|"
        + "cam timing|timing chain|timing belt|timing cover|valve clearance|brake light|head light|headlight|"
        + "fuel feed|oil feed|water feed|fuel supply|oil supply|hydraulic circuit|brake circuit|cooling circuit|"
        + "coil spring|coil springs|radio|radiator|brake|brakes|clutch|gearbox|exhaust|wiper blade|fan blade|saw blade|battery terminal|battery terminals|battery post|battery clamp|"
        + "carburettor|fuel pump|water pump|alternator|dynamo|starter motor|starter|heater|horn|"
        + "coffee|tea|kettle|lunch|sandwich|phone|seat|roof|bonnet|boot lid|boot space|car boot|boot of the car|"
        + "steering|suspension|compressor|drill|torch|jack|ramp|trolley|toolbox|screwdriver|"
        + "thermostat|indicator|dipstick|oil level|water level|coolant|oil pressure|antifreeze|"
        + "spare parts|lead time|lead singer|lead free|leaded|cable ties|cable tie|plug socket|cap badge|contact details|"
        + "colour code|paint code|key code|post code|contact number|phone number|part number|order number|chassis number|engine number|serial number|job number|"
        + "entry|last entry|sticker|label|data plate|rating plate|sheet|notes|job card|card|receipt|diagram|drawing|leaflet|brochure|website|video|forum|photo|picture|magazine|"
        + "theirs|yours|mine|hers|run out|runout|end float|side float|lead flashing|lead roof|lead pipe|plug hole|plug holes|plug thread|plug threads|seller|buyer|dealer|vendor|listing|advert|charging voltage|cranking voltage|charging rate|earth strap|him|fire engine|fire extinguisher|fire brigade|version|variant|"
        + "bay|page|box|gear|drawer|step|shelf|row|room|channel|line|lane|gate|level|floor|house|lift|ticket|job|invoice|"
        + "table|chapter|stage|picture|photo|button|key|option|group|team|unit|road|route|platform|"
        + "tappet clearance|bearing clearance|ground clearance|piston clearance|ring clearance|side clearance|shaft clearance|clutch clearance|"
        + "bench light|bench lamp|inspection lamp|inspection light|work light|work lamp|lead lamp|warning light|oil light|interior light|courtesy light|"
        + "strip light|ceiling light|desk lamp|head lamp|headlamp|tail light|side light|fog light|garage light|workshop light|street light|"
        + "front brake|rear brake|blue car|red car|green car|white car|black car|silver car|yellow car|gray car|wire brush|wire brushes|wire wool|wire cutters|wire strippers|lead pencil|plug spanner|plug wrench|plug box|points|condenser|dwell|vacuum|compression|idle speed|mixture|choke|float|jet|needle|king lead|coil lead";
}
