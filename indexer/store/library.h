#pragma once
// A library is a folder she can see: photos/<year>/<date> <client> <kind>/<original name>, readable
// without the program; records.sqlite; cache/, which can be deleted and is made again; incoming/,
// where files wait under a temporary name until they are whole.

#include "indexer/disk/file_system.h"
#include "indexer/lock/locked_file_system.h"
#include "indexer/store/backup_table.h"
#include "indexer/store/bin_table.h"
#include "indexer/store/board_table.h"
#include "indexer/store/client_table.h"
#include "indexer/store/consent_table.h"
#include "indexer/store/credit_table.h"
#include "indexer/store/device_table.h"
#include "indexer/store/head_points_table.h"
#include "indexer/store/history.h"
#include "indexer/store/inspiration_table.h"
#include "indexer/store/kit_tick_table.h"
#include "indexer/store/ledger_table.h"
#include "indexer/store/library_settings.h"
#include "indexer/store/look_fact_table.h"
#include "indexer/store/look_table.h"
#include "indexer/store/morning_table.h"
#include "indexer/store/pair_filter_table.h"
#include "indexer/store/pair_table.h"
#include "indexer/store/photo_table.h"
#include "indexer/store/recipe_table.h"
#include "indexer/store/recipe_template_table.h"
#include "indexer/store/search_table.h"
#include "indexer/store/seen_table.h"
#include "indexer/store/selection_table.h"
#include "indexer/store/settings_table.h"
#include "indexer/store/sign_off_table.h"
#include "indexer/store/sitting_table.h"
#include "indexer/store/wedding_table.h"

namespace quarterturn {

// The library has a lock, and its key is not on the key ring of this process; or it was being
// locked or unlocked for good, and that has to be gone on with first (lock_library.h).
class LibraryLocked : public StoreError {
    using StoreError::StoreError;
};

class Library {
  public:
    // Makes a library in a new or empty folder. Throws StoreError when something is there already.
    static Library create(const Path& folder, FileSystem& disk = real_file_system());
    // Throws StoreError when the folder is no library, or from a newer version; LibraryLocked when
    // it cannot be read yet.
    static Library open(const Path& folder, FileSystem& disk = real_file_system());
    // Where `open` throws RecordsUnwritable: changes nothing in the folder and lets nothing be
    // changed. Throws as `open`, and when the records have to be written to before they can be
    // read.
    static Library open_to_look(const Path& folder, FileSystem& disk = real_file_system());
    // The one or the other, as the disk allows; a full one is looked at in a copy, in memory.
    // Throws as they do.
    static Library open_or_look(const Path& folder, FileSystem& disk = real_file_system());
    // The same once more, while this program has it open: where it is gone, its drive is.
    static Library open_again(const Path& folder, FileSystem& disk);

    const Path& folder() const { return folder_; }
    Path photo_file(const Photo& photo) const { return folder_ / photo.file.path; }
    Path cache_folder() const { return folder_ / "cache"; }
    Path incoming_folder() const { return folder_ / "incoming"; }
    // For every file of the library and elsewhere; it sees through the lock, where there is one.
    FileSystem& disk() { return locked_ ? *locked_ : *disk_; }
    // Null while the library has no lock.
    const KeysInHand& keys() const { return keys_; }
    Database& database() { return *database_; }
    bool only_to_look() const { return database_->only_to_look(); }
    // A sentence where open_or_look could not open it to be changed; else empty.
    const std::string& why_only_to_look() const { return why_only_to_look_; }
    // A sentence where the records are older than they were when they were closed last; else empty.
    std::string older_records() const;

    ClientTable clients() { return ClientTable{*database_}; }
    WeddingTable weddings() { return WeddingTable{*database_}; }
    SittingTable sittings() { return SittingTable{*database_}; }
    MorningTable mornings() { return MorningTable{*database_}; }
    BoardTable boards() { return BoardTable{*database_}; }
    HeadPointsTable head_points() { return HeadPointsTable{*database_}; }
    LookTable looks() { return LookTable{*database_}; }
    LookFactTable look_facts() { return LookFactTable{*database_}; }
    PairTable pairs() { return PairTable{*database_}; }
    PairFilterTable pair_filters() { return PairFilterTable{*database_}; }
    InspirationTable inspirations() { return InspirationTable{*database_}; }
    RecipeTable recipes() { return RecipeTable{*database_}; }
    RecipeTemplateTable recipe_templates() { return RecipeTemplateTable{*database_}; }
    DeviceTable devices() { return DeviceTable{*database_}; }
    PhotoTable photos() { return PhotoTable{*database_}; }
    BinTable bin() { return BinTable{*database_}; }
    History history() { return History{*database_}; }
    SearchTable search() { return SearchTable{*database_}; }
    SignOffTable sign_offs() { return SignOffTable{*database_}; }
    SeenTable seen() { return SeenTable{*database_}; }
    ConsentTable consents() { return ConsentTable{*database_}; }
    CreditTable credits() { return CreditTable{*database_}; }
    SelectionTable selections() { return SelectionTable{*database_}; }
    LedgerTable ledger() { return LedgerTable{*database_}; }
    KitTickTable kit_ticks() { return KitTickTable{*database_}; }
    BackupTable backups() { return BackupTable{*database_}; }
    VerificationTable verification() { return VerificationTable{*database_}; }
    SettingsTable settings() { return SettingsTable{*database_}; }

  private:
    Library(Path folder, FileSystem& disk, Opening opening);
    void settle_in();

    Path folder_;
    FileSystem* disk_;
    KeysInHand keys_;
    std::unique_ptr<LockedFileSystem> locked_;
    std::unique_ptr<Database> database_;
    std::string why_only_to_look_;
};

}  // namespace quarterturn
