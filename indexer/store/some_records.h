#pragma once
// The part of the records that a job is about, read with one statement however many there are of
// each kind: what a screen waits for must not grow with the years. Lists are in the order of the
// tables they are a part of; what is not there is left out. All functions throw StoreError.

#include <chrono>
#include <map>
#include <optional>
#include <span>
#include <vector>

#include "indexer/record/credit.h"
#include "indexer/record/ledger.h"
#include "indexer/record/pair.h"
#include "indexer/record/people.h"
#include "indexer/store/database.h"

namespace quarterturn {

// From a day on, up to the day before another; without an end where none is named.
struct DaysFrom {
    std::optional<Date> first{};
    std::optional<Date> end{};
};

// How much there was in a month.
struct MonthCount {
    std::chrono::year_month month{};
    int weddings = 0;
    int sittings = 0;  // without those of the day of their wedding

    bool operator==(const MonthCount&) const = default;
};

class SomeRecords {
  public:
    explicit SomeRecords(Database& database) : database_(&database) {}

    std::vector<Client> clients(std::span<const ClientId> ids);
    std::vector<Wedding> weddings(std::span<const WeddingId> ids);
    std::vector<Wedding> weddings_on(const DaysFrom& days);
    std::vector<Wedding> weddings_with(std::span<const ClientId> clients);  // in the party
    std::vector<Sitting> sittings_on(const DaysFrom& days);
    std::vector<MonthCount> months_before(Date day);  // the newest first
    // Those for a wedding, and those worked on in a sitting.
    std::vector<Look> looks_of(std::span<const WeddingId> weddings,
                               std::span<const SittingId> sittings);
    std::vector<Look> looks(std::span<const LookId> ids);
    std::vector<Look> looks_of_clients_of(std::span<const LookId> looks);  // these and her others
    std::vector<Sitting> sittings(std::span<const SittingId> ids);
    std::vector<Pair> pairs(std::span<const LookId> looks);
    std::map<LookId, LookFacts> facts(std::span<const LookId> looks);
    std::map<LookId, ClientId> clients_of(std::span<const LookId> looks);
    std::map<SittingId, ClientId> clients_of(std::span<const SittingId> sittings);

    std::vector<ConsentEntry> consents(std::span<const ClientId> clients);
    // Who said anything that holds until one of these days, both included.
    std::vector<ClientId> clients_of_consents_until(Date first, Date last);
    std::map<PhotoId, Credit> credits(std::span<const PhotoId> photos);
    // Of photos not in the bin, those that hold until one of these days.
    std::map<PhotoId, Credit> credits_until(Date first, Date last);
    std::map<PhotoId, Seen> seen(std::span<const PhotoId> photos);
    std::vector<Exported> exports_out_there();  // not taken down
    std::vector<Exported> exports_under(std::span<const ConsentId> consents);

  private:
    Database* database_;
};

}  // namespace quarterturn
