using InspectLog.Doubts;

namespace InspectLog.Dictation.Control;

/// <summary>A command that was heard.</summary>
/// <param name="Word">The command.</param>
/// <param name="Doubt">Why it is to be asked for again and not obeyed; null when it is to be obeyed.</param>
public sealed record HeardControl(ControlWord Word, Doubt? Doubt);
