using System.Text.Json.Serialization;

namespace InspectLog.Doubts;

/// <summary>Why a person should look twice at what was understood: a kind with its arguments, worded where it is shown.
/// Checks and conditions are named by their ids, units by their symbols.</summary>
/// <remarks>Journals keep doubts. The name a kind has here and its arguments never change once written; another meaning is
/// another kind.</remarks>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(AsWorded), "as worded")]
[JsonDerivedType(typeof(UnknownWords), "not understood")]
[JsonDerivedType(typeof(HeardAs), "heard as")]
[JsonDerivedType(typeof(SaidOfPlans), "said of plans")]
[JsonDerivedType(typeof(InPlaceOfNumber), "in place of number")]
[JsonDerivedType(typeof(WithoutNumber), "without number")]
[JsonDerivedType(typeof(DoneOrFound), "done or found")]
[JsonDerivedType(typeof(PerhapsPlace), "perhaps place")]
[JsonDerivedType(typeof(PerhapsNoFinding), "perhaps no finding")]
[JsonDerivedType(typeof(HeardUnclearly), "heard unclearly")]
[JsonDerivedType(typeof(TakenFor), "taken for")]
[JsonDerivedType(typeof(TakenForNumber), "taken for number")]
[JsonDerivedType(typeof(TakenForUnit), "taken for unit")]
[JsonDerivedType(typeof(TakenForParity), "taken for parity")]
[JsonDerivedType(typeof(OutsidePlausibleSpan), "outside plausible span")]
[JsonDerivedType(typeof(WrongUnit), "wrong unit")]
[JsonDerivedType(typeof(EitherUnit), "either unit")]
[JsonDerivedType(typeof(UnitUnsaid), "unit unsaid")]
[JsonDerivedType(typeof(FiguresSaidApart), "figures said apart")]
[JsonDerivedType(typeof(FiguresWrittenApart), "figures written apart")]
[JsonDerivedType(typeof(FiguresWrittenTogether), "figures written together")]
[JsonDerivedType(typeof(PointOrSlash), "point or slash")]
[JsonDerivedType(typeof(SoundsLikeNumber), "sounds like number")]
[JsonDerivedType(typeof(OnlyBound), "only bound")]
[JsonDerivedType(typeof(SaidAsRange), "said as range")]
[JsonDerivedType(typeof(BareNumber), "bare number")]
[JsonDerivedType(typeof(GaugesReversed), "gauges reversed")]
[JsonDerivedType(typeof(CheckUnnamed), "check unnamed")]
[JsonDerivedType(typeof(EitherCheck), "either check")]
[JsonDerivedType(typeof(EitherCondition), "either condition")]
[JsonDerivedType(typeof(FaultUnsaid), "fault unsaid")]
[JsonDerivedType(typeof(Hedged), "hedged")]
[JsonDerivedType(typeof(PlaceUnnamed), "place unnamed")]
[JsonDerivedType(typeof(TakenAsAll), "taken as all")]
[JsonDerivedType(typeof(TakenInOrder), "taken in order")]
[JsonDerivedType(typeof(AnyWithoutNot), "any without not")]
[JsonDerivedType(typeof(ValuesForPlaces), "values for places")]
[JsonDerivedType(typeof(EndUnknown), "end unknown")]
[JsonDerivedType(typeof(OfLastLookedAt), "of last looked at")]
[JsonDerivedType(typeof(CountOrValue), "count or value")]
[JsonDerivedType(typeof(CylinderOrValue), "cylinder or value")]
[JsonDerivedType(typeof(CountStartUnsaid), "count start unsaid")]
[JsonDerivedType(typeof(CountedUnnamed), "counted unnamed")]
[JsonDerivedType(typeof(WasNotUsed), "was not used")]
[JsonDerivedType(typeof(Competes), "competes with")]
[JsonDerivedType(typeof(OtherPlace), "other place")]
[JsonDerivedType(typeof(PerhapsNegated), "perhaps negated")]
[JsonDerivedType(typeof(PerhapsNothing), "perhaps nothing")]
[JsonDerivedType(typeof(SeldomSaidSo), "seldom said so")]
[JsonDerivedType(typeof(CommandFaint), "command faint")]
[JsonDerivedType(typeof(CommandHeardAs), "command heard as")]
public abstract record Doubt
{
    private protected Doubt()
    {
    }
}

/// <summary>A doubt of an entry written before doubts had kinds.</summary>
/// <param name="Text">As it was worded then.</param>
public sealed record AsWorded(string Text) : Doubt;

/// <summary>The utterance that is a command was heard faintly.</summary>
public sealed record CommandFaint : Doubt;

/// <summary>The utterance only sounds like the command.</summary>
/// <param name="Heard">What was heard.</param>
public sealed record CommandHeardAs(string Heard) : Doubt;
