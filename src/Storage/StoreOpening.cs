namespace Storage;

/// <summary>What the opening of a store may do to it.</summary>
public enum StoreOpening
{
    /// <summary>It is to be read and is not changed; it may also be a backup.</summary>
    ToRead,

    /// <summary>It is to be read and written, and its tables are brought up to date.</summary>
    ToUse,

    /// <summary>As <see cref="ToUse"/>; where there is none, it is made.</summary>
    OrMake,
}

/// <summary>The store cannot be opened.</summary>
public class StoreException : Exception
{
    /// <param name="message">Which, and why not.</param>
    /// <param name="cause">What was met.</param>
    internal StoreException(string message, Exception? cause = null) : base(message, cause)
    {
    }

    internal static StoreException Of(string name, Exception cause) => new($"The store {name} cannot be opened: {cause.Message}", cause);
}

/// <summary>There is no store where one was to be opened, and none was to be made.</summary>
public sealed class NoStoreException : StoreException
{
    internal NoStoreException(string name) : base($"The store {name} does not exist.")
    {
    }
}

/// <summary>A newer version has upgraded the store since it was opened: what this program writes may lack what is demanded now.</summary>
public sealed class StoreUpgradedException : System.Data.Common.DbException
{
    internal StoreUpgradedException() : base("The store was upgraded by a newer version of this service, so this instance writes nothing to it any more and has to be replaced.")
    {
    }
}

/// <summary>The store that was opened is gone or another: nothing may be written to what is left of it.</summary>
public sealed class StoreLostException : System.Data.Common.DbException
{
    internal StoreLostException(string name) : base($"The store {name} is no longer the one that was opened: it was moved, deleted or replaced. Put it back, or end the service and start it on what is there now.")
    {
    }
}
