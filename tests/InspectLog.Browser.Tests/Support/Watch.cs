using Microsoft.Playwright;

namespace InspectLog.Browser.Tests.Support;

/// <summary>Collects what a page complains of: script errors, refused content, requests that failed.</summary>
internal sealed class Watch
{
    private readonly List<string> _complaints = [];

    public Watch(IBrowserContext context)
    {
        context.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning" && !IsRefusal(message.Text))
            {
                _complaints.Add($"{message.Page?.Url}: {message.Type}: {message.Text}");
            }
        };
        context.WebError += (_, error) => _complaints.Add($"{error.Page?.Url}: {error.Error}");
    }

    public IReadOnlyList<string> Complaints => _complaints;

    /// <summary>Chromium reports a form that came back with mistakes to correct as if it were a fault.</summary>
    private static bool IsRefusal(string text) => text.Contains("status of 422", StringComparison.Ordinal);
}
