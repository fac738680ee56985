namespace InspectLog.Measuring;

/// <summary>The names of the contributions that advice is given about.</summary>
internal static class ContributionNames
{
    internal const string Accuracy = "instrument accuracy";
    internal const string DisplayStep = "display step";
    internal const string Repeats = "spread of the repeats";
    internal const string WindingTemperature = "winding temperature";
}
