namespace InspectLog.Checks;

/// <summary>A check sheet file that cannot be used. The message names the place in the file, says what is wrong and
/// what to do, and is written for the person who edits the file.</summary>
public sealed class CheckSheetFormatException : Exception
{
    /// <summary>A complaint about one place in the file.</summary>
    /// <param name="path">Where, as a path of member names and indexes: <c>checks[2].measurand.limits</c>; empty for
    /// the file as a whole.</param>
    /// <param name="problem">What is wrong and what to do.</param>
    /// <param name="inner">What the JSON reader said, if it was its complaint.</param>
    public CheckSheetFormatException(string path, string problem, Exception? inner = null)
        : base(path.Length == 0 ? problem : $"{path}: {problem}", inner) => Path = path;

    /// <summary>Where in the file, empty for the file as a whole.</summary>
    public string Path { get; }
}
