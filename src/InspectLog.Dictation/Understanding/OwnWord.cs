namespace InspectLog.Dictation.Understanding;

/// <summary>A phrase of the workshop's own that stands for something the check sheet knows.</summary>
/// <param name="Phrase">What people say: one to five words; see <see cref="OwnVocabulary.Problem"/>.</param>
/// <param name="Check">Id of the check it names, or whose condition it means.</param>
/// <param name="Condition">The condition it means; null where it is another name of the check or its part.</param>
public sealed record OwnWord(string Phrase, string Check, string? Condition);
