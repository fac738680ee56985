namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>One step through a run of numbers.</summary>
/// <param name="Next">The token after it.</param>
/// <param name="Role">What the tokens stand for; null where they are passed over.</param>
/// <param name="Cost">What the step costs by itself.</param>
internal readonly record struct RunStep(int Next, NumberRole? Role, double Cost);
