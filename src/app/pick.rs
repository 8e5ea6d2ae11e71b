//! Files and folders that are asked for: what each is for, which kinds fit: names, kinds, endings.

/// What a path is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Purpose {
    /// Open a job.
    Open,
    /// Save the job.
    Save,
    /// Write the papers.
    Papers,
    /// Write the record of a next install.
    Record,
    /// Read a weather file.
    Weather,
    /// Read a logger's file.
    Logger,
    /// Read a price file.
    ImportPrices,
    /// Write the job's prices and rates.
    ExportPrices,
    /// Learn from finished jobs.
    Finished,
    /// Pin a photo.
    Photo,
    /// Read outlines.
    Outlines,
    /// Choose a logo.
    Logo,
}

/// What kind of path is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// A file that is there.
    OpenFile,
    /// A file to write.
    SaveFile,
    /// A folder.
    Folder,
}

impl Purpose {
    /// All of them.
    pub const ALL: [Self; 12] = [
        Self::Open,
        Self::Save,
        Self::Papers,
        Self::Record,
        Self::Weather,
        Self::Logger,
        Self::ImportPrices,
        Self::ExportPrices,
        Self::Finished,
        Self::Photo,
        Self::Outlines,
        Self::Logo,
    ];

    /// Its message: title as the value, `field`, `button` and `kind` as attributes.
    pub const fn message(self) -> &'static str {
        match self {
            Self::Open => "pick-open",
            Self::Save => "pick-save",
            Self::Papers => "pick-papers",
            Self::Record => "pick-record",
            Self::Weather => "pick-weather",
            Self::Logger => "pick-logger",
            Self::ImportPrices => "pick-import-prices",
            Self::ExportPrices => "pick-export-prices",
            Self::Finished => "pick-finished",
            Self::Photo => "pick-photo",
            Self::Outlines => "pick-outlines",
            Self::Logo => "pick-logo",
        }
    }

    /// A file or a folder, to read or to write.
    pub const fn form(self) -> Form {
        match self {
            Self::Save | Self::ExportPrices => Form::SaveFile,
            Self::Papers | Self::Record | Self::Finished => Form::Folder,
            _ => Form::OpenFile,
        }
    }

    /// Endings of the files that fit.
    pub const fn extensions(self) -> &'static [&'static str] {
        match self {
            Self::Open | Self::Save => &["ron", "json"],
            Self::ImportPrices | Self::ExportPrices => &["ron"],
            Self::Papers | Self::Record | Self::Finished => &[],
            Self::Weather => &["epw", "csv"],
            Self::Logger => &["csv", "txt", "tsv"],
            Self::Photo => &["jpg", "jpeg", "png"],
            Self::Outlines => &["dxf", "svg", "csv"],
            Self::Logo => &["png", "jpg", "jpeg", "svg"],
        }
    }
}
