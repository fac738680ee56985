namespace InspectLog.Benchmarks.Dictation;

/// <summary>Something the scoring needs is not there; the message says what.</summary>
internal sealed class ScoringException(string message, Exception? inner = null) : Exception(message, inner);
