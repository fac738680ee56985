using InspectLog.Inspecting.ByVoice;
using InspectLog.Journal.State;

namespace InspectLog.App.HandsFree;

/// <summary>What the hands-free panel shows of an inspection.</summary>
/// <param name="Turns">The last utterances with their answers, newest first, those still being read among them.</param>
/// <param name="Kept">How many utterances are kept.</param>
/// <param name="Thinking">How many of them have no answer yet.</param>
public sealed record HandsFreeView(IReadOnlyList<HandsFreeTurn> Turns, int Kept, int Thinking)
{
    /// <summary>Enough for all that is said while one long note is being read.</summary>
    private const int MostTurns = 12;

    /// <summary>Gathers it from the turns of an inspection, newest first. Pure.</summary>
    public static HandsFreeView Of(IReadOnlyList<HandsFreeTurn> turns) =>
        new([.. turns.Take(MostTurns)], turns.Count, turns.Count(turn => turn.IsThinking));

    /// <summary>The newest turn that has an answer; null when none has.</summary>
    public HandsFreeTurn? Last => Turns.FirstOrDefault(turn => turn.Answer.Length > 0);
}
