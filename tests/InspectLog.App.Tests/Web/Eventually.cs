namespace InspectLog.App.Tests.Web;

/// <summary>Waits for what a background worker does.</summary>
public static class Eventually
{
    public static async Task<T> GetAsync<T>(Func<T?> look)
        where T : class
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        limit.CancelAfter(TimeSpan.FromSeconds(30));
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
