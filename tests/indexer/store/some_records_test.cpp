// A part of the records against all of them, filtered here by the plainest rule.

#include "indexer/store/some_records.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <set>

#include "tests/support/example_library.h"

namespace quarterturn {
namespace {

// Days around a turn of the year, so that months and days meet.
Date a_day() {
    const std::chrono::sys_days first{std::chrono::year{2025} / 12 / 20};
    return Date{first + std::chrono::days(*rc::gen::inRange(0, 45))};
}

std::optional<Date> perhaps_a_day() {
    return *rc::gen::inRange(0, 4) == 0 ? std::nullopt : std::optional(a_day());
}

template <class Id>
std::vector<Id> some_of(const std::vector<Id>& ids) {
    std::vector<Id> some;
    for (const Id id : ids) {
        if (*rc::gen::inRange(0, 2) == 0) some.push_back(id);
    }
    some.push_back(Id{9'999});  // is not there
    return some;
}

template <class Id>
bool among(const std::vector<Id>& ids, Id id) {
    return std::ranges::find(ids, id) != ids.end();
}

template <class Record, class Keep>
std::vector<Record> only(std::vector<Record> records, Keep keep) {
    std::erase_if(records, [&](const Record& record) { return !keep(record); });
    return records;
}

struct SomeYears {
    SomeYears() {
        for (int i = *rc::gen::inRange(1, 5); i > 0; --i) {
            clients.push_back(library.clients().add(client_called("Client " + std::to_string(i))));
        }
        for (int i = *rc::gen::inRange(0, 5); i > 0; --i) weddings.push_back(add_wedding(i));
        for (int i = *rc::gen::inRange(0, 8); i > 0; --i) sittings.push_back(add_sitting());
        for (int i = *rc::gen::inRange(0, 5); i > 0; --i) add_look(i);
    }

    WeddingId add_wedding(int number) {
        Wedding wedding;
        wedding.name = "Wedding " + std::to_string(number);
        wedding.date = a_day();
        for (const ClientId client : clients) {
            if (*rc::gen::inRange(0, 2) == 0) wedding.party.push_back({client, "bridesmaid"});
        }
        return library.weddings().add(wedding);
    }

    std::optional<WeddingId> perhaps_a_wedding() {
        if (weddings.empty() || *rc::gen::inRange(0, 3) == 0) return std::nullopt;
        return *rc::gen::elementOf(weddings);
    }

    SittingId add_sitting() {
        Sitting sitting;
        sitting.client = *rc::gen::elementOf(clients);
        sitting.wedding = perhaps_a_wedding();
        sitting.kind = *rc::gen::element(SittingKind::trial, SittingKind::wedding_day);
        Date day = a_day();
        if (sitting.wedding && *rc::gen::inRange(0, 2) == 0) {
            day = library.weddings().find(*sitting.wedding)->date;
        }
        sitting.starts = LocalTime(std::chrono::local_days(day)) +
                         std::chrono::minutes(*rc::gen::inRange(0, 24 * 60));
        sitting.ends = sitting.starts + std::chrono::hours(1);
        return library.sittings().add(sitting);
    }

    void add_look(int number) {
        Look look;
        look.client = *rc::gen::elementOf(clients);
        look.name = "Bun " + std::to_string(number);
        look.wedding = perhaps_a_wedding();
        for (const SittingId sitting : sittings) {
            const bool hers = library.sittings().find(sitting)->client == look.client;
            if (hers && *rc::gen::inRange(0, 2) == 0) look.sittings.push_back(sitting);
        }
        looks.push_back(library.looks().add(look));
    }

    TemporaryFolder folder;
    Library library = Library::create(folder / "library");
    SomeRecords some{library.database()};
    std::vector<ClientId> clients;
    std::vector<WeddingId> weddings;
    std::vector<SittingId> sittings;
    std::vector<LookId> looks;
};

RC_GTEST_PROP(SomeRecords, AreThosePartsOfAll, ()) {
    SomeYears years;
    Library& library = years.library;
    const auto all_weddings = library.weddings().all();
    const auto all_sittings = library.sittings().all();
    const auto all_looks = library.looks().all();
    const auto clients = some_of(years.clients);
    const auto weddings = some_of(years.weddings);
    const auto sittings = some_of(years.sittings);
    const auto looks = some_of(years.looks);
    RC_ASSERT(years.some.clients(clients) == only(library.clients().all(), [&](const Client& one) {
                  return among(clients, one.id);
              }));
    RC_ASSERT(years.some.weddings(weddings) ==
              only(all_weddings, [&](const Wedding& one) { return among(weddings, one.id); }));
    RC_ASSERT(years.some.weddings_with(clients) == only(all_weddings, [&](const Wedding& one) {
                  return std::ranges::any_of(one.party, [&](const PartyMember& member) {
                      return among(clients, member.client);
                  });
              }));
    RC_ASSERT(years.some.looks_of(weddings, sittings) == only(all_looks, [&](const Look& one) {
                  return (one.wedding && among(weddings, *one.wedding)) ||
                         std::ranges::any_of(one.sittings, [&](SittingId sitting) {
                             return among(sittings, sitting);
                         });
              }));
    std::map<LookId, ClientId> of_looks;
    for (const Look& one : all_looks) {
        if (among(looks, one.id)) of_looks[one.id] = one.client;
    }
    RC_ASSERT(years.some.clients_of(looks) == of_looks);
    std::map<SittingId, ClientId> of_sittings;
    for (const Sitting& one : all_sittings) {
        if (among(sittings, one.id)) of_sittings[one.id] = one.client;
    }
    RC_ASSERT(years.some.clients_of(sittings) == of_sittings);
}

RC_GTEST_PROP(SomeRecords, OfDaysAreThoseOfTheirDays, ()) {
    SomeYears years;
    const DaysFrom days{perhaps_a_day(), perhaps_a_day()};
    const auto in_days = [&](Date day) {
        return (!days.first || day >= *days.first) && (!days.end || day < *days.end);
    };
    RC_ASSERT(years.some.weddings_on(days) ==
              only(years.library.weddings().all(),
                   [&](const Wedding& one) { return in_days(one.date); }));
    RC_ASSERT(years.some.sittings_on(days) ==
              only(years.library.sittings().all(),
                   [&](const Sitting& one) { return in_days(date_of(one.starts)); }));
}

RC_GTEST_PROP(SomeRecords, CountEachMonthBeforeADay, ()) {
    SomeYears years;
    const Date before = a_day();
    std::map<std::chrono::year_month, MonthCount> months;
    std::map<WeddingId, Date> days;
    for (const Wedding& one : years.library.weddings().all()) {
        days[one.id] = one.date;
        if (one.date < before) ++months[one.date.year() / one.date.month()].weddings;
    }
    for (const Sitting& one : years.library.sittings().all()) {
        const Date day = date_of(one.starts);
        const bool of_the_day =
            one.kind == SittingKind::wedding_day && one.wedding && days.at(*one.wedding) == day;
        if (day < before && !of_the_day) ++months[day.year() / day.month()].sittings;
    }
    std::vector<MonthCount> wanted;
    for (auto& [month, count] : months) {
        count.month = month;
        wanted.insert(wanted.begin(), count);
    }
    RC_ASSERT(years.some.months_before(before) == wanted);
}

}  // namespace
}  // namespace quarterturn
