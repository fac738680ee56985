using InspectLog.Dictation.Understanding.Events;
using InspectLog.Dictation.Understanding.Lattice;

namespace InspectLog.Dictation.Understanding.Scoring;

/// <summary>What a note means, where it is known: a search that learns follows only ways that can lead there.</summary>
internal interface IGoal
{
    /// <summary>Whether a way to read numbers can lead there.</summary>
    bool Allows(Note note, NumberSegment[] numbers);

    /// <summary>Whether something is said so anywhere.</summary>
    bool Allows(Claim claim);

    /// <summary>Whether it is said of all these places.</summary>
    bool Allows(Claim claim, long places);

    /// <summary>Whether exactly what is meant was found.</summary>
    bool IsMet(Found? found);
}
