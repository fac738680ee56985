namespace InspectLog.Tests;

/// <summary>The files the tests were built from.</summary>
internal static class Repository
{
    /// <summary>The folder of the solution, above the place the tests run from.</summary>
    public static string Root { get; } = Find();

    /// <summary>A file or folder of it.</summary>
    public static string PathOf(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string Find()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "InspectLog.sln")))
            {
                return at.FullName;
            }
        }

        throw new DirectoryNotFoundException("There is no InspectLog.sln above the tests.");
    }
}
