namespace InspectLog.Journal.Entries;

/// <summary>The workshop's name and address, as reports have them at their head. Written to the workshop's journal; the last one
/// holds.</summary>
/// <param name="Name">Its name; empty where reports are to have none.</param>
/// <param name="Address">Its address, lines apart by line feeds; may be empty.</param>
[EntryKind("workshop-named")]
public sealed record WorkshopNamed(string Name, string Address) : EntryBody;

/// <summary>Somebody said how soon what an inspection found in a check is to be seen to. The last word on a check holds; it may be said
/// after closing.</summary>
/// <param name="Inspection">Sequence of the inspection's first entry.</param>
/// <param name="Check">Check id.</param>
/// <param name="Urgency">now, soon or later.</param>
[EntryKind("urgency-judged")]
public sealed record UrgencyJudged(long Inspection, string Check, string Urgency) : EntryBody;
