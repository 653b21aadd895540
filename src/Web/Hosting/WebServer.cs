using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Nookwright.Web.Sessions;
using Nookwright.Web.Shell;

namespace Nookwright.Web.Hosting;

/// <summary>Serves the page on this machine, and on no other.</summary>
public static class WebServer
{
    /// <summary>Threads for the pages, beside those that the search for a plan keeps busy: one for each core.</summary>
    private const int ThreadsForPages = 4;

    /// <summary>Serves until the program is stopped.</summary>
    /// <returns>0, or 2 when it could not start with what was asked for.</returns>
    public static async Task<int> Run(WebOptions options)
    {
        // Else an edit waits, while a plan is looked for, until the runtime notices that a thread more is wanted.
        ThreadPool.GetMinThreads(out var working, out var waiting);
        ThreadPool.SetMinThreads(working + ThreadsForPages, waiting);
        try
        {
            var folder = options.Folder is { } named ? new JobFolder(named) : MakersFolder.Open();
            await using var server = Build(options, folder);
            await server.StartAsync();
            Announce(server, folder, options);
            await server.WaitForShutdownAsync();
            return 0;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or SocketException)
        {
            Console.Error.WriteLine(WhyNot(trouble, options));
            return 2;
        }
    }

    private static string WhyNot(Exception trouble, WebOptions options) =>
        trouble switch
        {
            { InnerException: AddressInUseException } =>
                $"Port {options.Port} on 127.0.0.1 is taken; perhaps Nookwright is at http://127.0.0.1:{options.Port} already. "
                    + "Stop the other program, or choose another port: --port 0 takes any free one.",
            SocketException =>
                $"Port {options.Port} on 127.0.0.1 may not be used ({trouble.Message}): choose another with --port.",
            _ => $"{trouble.Message} Choose another folder with --folder.",
        };

    private static WebApplication Build(WebOptions options, JobFolder folder)
    {
        var builder = WebApplication.CreateBuilder(
            new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory }
        );
        builder
            .WebHost.UseStaticWebAssets()
            .ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, options.Port));
        builder.Logging.ClearProviders().AddSimpleConsole().SetMinimumLevel(LogLevel.Warning);
        // Its keys are for this run only and never stored, which it warns about.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        // Told in our own words by Run.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        builder.Configuration["AllowedHosts"] = "127.0.0.1;localhost";
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddSingleton(folder).AddSingleton<JobSessions>().AddSingleton(TimeProvider.System);
        var server = builder.Build();
        server.UseExceptionHandler("/trouble");
        server.UseStatusCodePagesWithReExecute("/nothing-here");
        server.Use(PagePolicy.Apply);
        server.UseAntiforgery();
        server.MapStaticAssets();
        LookFiles.Map(server);
        PacketFile.Map(server);
        server
            .MapRazorComponents<App>()
            .AddInteractiveServerRenderMode(mode => mode.ContentSecurityFrameAncestorsPolicy = null);
        return server;
    }

    private static void Announce(WebApplication server, JobFolder folder, WebOptions options)
    {
        var address = AddressOf(server);
        Console.WriteLine($"Nookwright is at {address}");
        Console.WriteLine($"Jobs are in {folder.Path}");
        Console.WriteLine("Stop it with Ctrl+C; every edit is saved as it is made.");
        var job = options.Folder is null ? MakersFolder.FirstJob(folder) : null;
        if (options.OpensBrowser)
            BrowserOpening.TryOpen(job is null ? address : $"{address}/{JobAddress.Of(job)}");
    }

    private static string AddressOf(WebApplication server) =>
        server.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
}
