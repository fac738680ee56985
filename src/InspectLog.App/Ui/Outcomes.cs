using InspectLog.App.Bench;
using InspectLog.Inspecting.Standing;

namespace InspectLog.App.Ui;

/// <summary>How outcomes look: the name of their mark and of their style.</summary>
public static class Outcomes
{
    /// <summary>Name of the mark that stands beside the words.</summary>
    public static string Shape(PlaceOutcome outcome) => outcome switch
    {
        PlaceOutcome.Good => "good",
        PlaceOutcome.Doubtful => "doubtful",
        PlaceOutcome.Bad => "bad",
        PlaceOutcome.Recorded => "recorded",
        _ => "none",
    };

    /// <summary>Style class for the words.</summary>
    public static string Style(PlaceOutcome outcome) => $"is-{Shape(outcome)}";

    /// <summary>Mark of a check in the list: a check left out has its own.</summary>
    public static string Shape(CheckProgress progress) => progress.Standing switch
    {
        CheckStanding.LeftOut when progress.Outcome < PlaceOutcome.Doubtful => "left",
        CheckStanding.NotDone => "none",
        _ => Shape(progress.Outcome),
    };
}
