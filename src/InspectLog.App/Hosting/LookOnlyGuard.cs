using InspectLog.Journal;

namespace InspectLog.App.Hosting;

/// <summary>While a data folder is only looked at, whatever would change something is refused in one place, before any of
/// it is read.</summary>
public static class LookOnlyGuard
{
    public static void UseLookOnlyGuard(this WebApplication app, bool isLookedAtOnly)
    {
        if (isLookedAtOnly)
        {
            app.Use((context, next) => HttpMethods.IsGet(context.Request.Method) || HttpMethods.IsHead(context.Request.Method)
                ? next(context)
                : throw new JournalReadOnlyException("This data folder was opened to be looked at only, so nothing was saved."));
        }
    }
}
