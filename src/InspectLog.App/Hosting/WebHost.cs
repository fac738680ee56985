namespace InspectLog.App.Hosting;

/// <summary>The web app.</summary>
public static class WebHost
{
    /// <summary>Runs the web app until it is cancelled.</summary>
    public static Task RunAsync(WebHostOptions options, CancellationToken cancellationToken) =>
        throw new NotSupportedException("web host");
}
