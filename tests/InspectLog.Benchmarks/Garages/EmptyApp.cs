using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace InspectLog.Benchmarks.Garages;

/// <summary>An ASP.NET app that does nothing, as the baseline of a start: the same builder and server as the program's, and one
/// page.</summary>
internal static class EmptyApp
{
    /// <summary>Runs it until it is told to stop; prints its address.</summary>
    public static async Task<int> RunAsync()
    {
        var builder = WebApplication.CreateBuilder();
        builder.WebHost.UseUrls("http://127.0.0.1:0");
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        await using var app = builder.Build();
        app.MapGet("/", () => "Nothing");
        await app.StartAsync();
        Console.WriteLine(app.Urls.First() + "/");
        await app.WaitForShutdownAsync();
        return 0;
    }
}
