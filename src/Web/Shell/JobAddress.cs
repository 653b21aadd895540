namespace Nookwright.Web.Shell;

/// <summary>Where a job's pages are.</summary>
public static class JobAddress
{
    /// <summary>A job's page, relative to the program's address.</summary>
    public static string Of(string job) => $"job/{Uri.EscapeDataString(job)}";

    /// <summary>A place of a job's page.</summary>
    public static string Of(string job, string place) => $"{Of(job)}/{place}";

    /// <summary>A job's packet, as PDF.</summary>
    public static string Packet(string job) => $"{Of(job)}/packet.pdf";
}
