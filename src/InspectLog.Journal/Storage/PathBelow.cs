namespace InspectLog.Journal.Storage;

/// <summary>Paths that a file of a folder gives for other files of it. Whoever wrote the file may mean harm.</summary>
internal static class PathBelow
{
    /// <summary>Whether a path leads below a folder, on this system.</summary>
    public static bool IsIn(string root, string path) =>
        path.Length > 0 && Path.GetFullPath(Path.Combine(root, path)).StartsWith(Path.GetFullPath(root) + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    /// <summary>Whether a path, with slashes, stays below the folder it is meant for, on every system.</summary>
    public static bool Is(string path) => path.Length > 0
        && !path.Contains('\\', StringComparison.Ordinal) && !path.Contains(':', StringComparison.Ordinal) && !path.Any(char.IsControl)
        && path.Split('/').All(part => part is not ("" or "." or ".."));
}
