using InspectLog.App.Commands.Json;
using InspectLog.App.Media;

namespace InspectLog.App.Commands;

/// <summary>Names the copies of photos that somebody changed.</summary>
internal static class CopiesText
{
    /// <summary>Writes a line for each copy that does not fit its original, and says how many there are.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="dataFolder">The data folder; any other folder or file has no copies.</param>
    /// <param name="asJson">Whether a line is JSON.</param>
    public static int Write(TextWriter output, string dataFolder, bool asJson)
    {
        var misfits = CopyFiles.In(dataFolder).Misfits();
        foreach (var copy in misfits)
        {
            if (asJson)
                output.WriteJson(new MisfitJson(copy, false));
            else
                output.WriteLine($"copies/{copy}: NOT the copy that was made of its photo. It is not shown, and made anew when it is asked for.");
        }

        return misfits.Count;
    }

    /// <param name="Copy">The file, within the folder of copies.</param>
    private sealed record MisfitJson(string Copy, bool Intact);
}
