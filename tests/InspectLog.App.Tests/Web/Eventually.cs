namespace InspectLog.App.Tests.Web;

/// <summary>Waits for what a background worker does.</summary>
public static class Eventually
{
    /// <summary>When to give up; on a machine under load a second's work has been seen to take a minute.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    public static async Task<T> GetAsync<T>(Func<T?> look)
        where T : class
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        limit.CancelAfter(Patience);
        while (true)
        {
            if (look() is { } found)
            {
                return found;
            }

            await Task.Delay(20, limit.Token);
        }
    }
}
