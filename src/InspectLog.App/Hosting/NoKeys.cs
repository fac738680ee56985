using Microsoft.AspNetCore.DataProtection;
using Microsoft.Extensions.DependencyInjection.Extensions;

namespace InspectLog.App.Hosting;

/// <summary>Nothing a page sends out is sealed with a key: there are no log-ins, no antiforgery tokens (see
/// <see cref="SameOriginGuard"/>) and no components that go on living in the browser.</summary>
internal static class NoKeys
{
    /// <summary>Takes away what the components bring along to make a key at every start: it would be written into the home
    /// folder of the user, with a warning that it lies there in the open. What asks for a key all the same gets one
    /// that is gone when the program ends.</summary>
    public static void KeepNoKeys(this IServiceCollection services)
    {
        var protection = typeof(IDataProtectionBuilder).Assembly;
        foreach (var maker in services.Where(service => service.ServiceType == typeof(IHostedService)
            && service.ImplementationType?.Assembly == protection).ToList())
        {
            services.Remove(maker);
        }

        services.Replace(ServiceDescriptor.Singleton<IDataProtectionProvider, EphemeralDataProtectionProvider>());
    }
}
