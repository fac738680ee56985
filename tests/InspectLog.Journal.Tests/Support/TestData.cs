namespace InspectLog.Journal.Tests.Support;

/// <summary>The files beside the tests.</summary>
public static class TestData
{
    public static string PathOf(params string[] parts) =>
        Path.Combine([AppContext.BaseDirectory, "TestData", .. parts]);

    public static byte[] Bytes(params string[] parts) => File.ReadAllBytes(PathOf(parts));
}
