#include "ui/coming_up/record_edits.h"

#include <QCoreApplication>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::string said(const char* text, const std::string& name) {
    return to_utf8(QCoreApplication::translate("record_edits", text).arg(from_utf8(name)));
}

template <class Row, class Table>
Edit change_row(std::string what, Table (Library::*table)(), const Row& before, const Row& after) {
    return {std::move(what), [=](Library& library) { (library.*table)().change(after); },
            [=](Library& library) { (library.*table)().change(before); }};
}

// Adds the row, or puts it back under the number it had.
template <class Row, class Table>
void add_or_put_back(Table table, Row& row) {
    if (row.id) {
        table.put_back(row);
    } else {
        row.id = table.add(row);
    }
}

template <class Row, class Table>
Edit add_row(std::string what, Table (Library::*table)(), const Row& row) {
    const auto kept = std::make_shared<Row>(row);
    return {std::move(what), [=](Library& library) { add_or_put_back((library.*table)(), *kept); },
            [=](Library& library) { (library.*table)().remove(kept->id); }};
}

// A wedding being saved, with those of its party who are new.
struct WeddingSave {
    std::optional<Wedding> before;
    Wedding after;
    std::vector<NamedMember> named;
    std::vector<Client> added;

    void act(Library& library);
    void take_back(Library& library);

  private:
    void gather_party(Library& library);
    ClientId find_or_add(Library& library, const NamedMember& member);
    bool is_in_party(ClientId client) const;
};

bool WeddingSave::is_in_party(ClientId client) const {
    return std::ranges::find(after.party, client, &PartyMember::client) != after.party.end();
}

// Nobody is twice in a party: the same name again is somebody else.
ClientId WeddingSave::find_or_add(Library& library, const NamedMember& member) {
    if (member.client) return *member.client;
    for (const Client& known : library.clients().named(member.name)) {
        if (!is_in_party(known.id)) return known.id;
    }
    added.emplace_back().name = member.name;
    added.back().id = library.clients().add(added.back());
    return added.back().id;
}

void WeddingSave::gather_party(Library& library) {
    for (const NamedMember& member : named) {
        after.party.push_back({find_or_add(library, member), member.role});
    }
    named.clear();
}

void WeddingSave::act(Library& library) {
    Transaction transaction(library.database());
    for (const Client& client : added) library.clients().put_back(client);
    gather_party(library);
    if (before) {
        library.weddings().change(after);
    } else {
        add_or_put_back(library.weddings(), after);
    }
    transaction.commit();
}

void WeddingSave::take_back(Library& library) {
    Transaction transaction(library.database());
    if (before) {
        library.weddings().change(*before);
    } else {
        library.weddings().remove(after.id);
    }
    for (const Client& client : added) library.clients().remove(client.id);
    transaction.commit();
}

// A sitting being saved, with the looks that it works on.
struct SittingSave {
    Sitting before;
    Sitting after;
    std::vector<Look> looks;
    std::vector<Look> looks_before;  // those that were changed, as they were

    void act(Library& library);
    void take_back(Library& library);

  private:
    void attach(Library& library, Look look, bool worked_on);
};

void SittingSave::attach(Library& library, Look look, bool worked_on) {
    const bool is_there = std::ranges::find(look.sittings, after.id) != look.sittings.end();
    if (is_there == worked_on) return;
    looks_before.push_back(look);
    if (worked_on) {
        look.sittings.push_back(after.id);
    } else {
        std::erase(look.sittings, after.id);
    }
    library.looks().change(look);
}

void SittingSave::act(Library& library) {
    Transaction transaction(library.database());
    if (before.id) {
        library.sittings().change(after);
    } else {
        add_or_put_back(library.sittings(), after);
    }
    looks_before.clear();
    for (const Look& look : library.looks().of_client(after.client)) {
        attach(library, look, std::ranges::find(looks, look.id, &Look::id) != looks.end());
    }
    transaction.commit();
}

void SittingSave::take_back(Library& library) {
    Transaction transaction(library.database());
    for (const Look& look : looks_before) library.looks().change(look);
    if (before.id) {
        library.sittings().change(before);
    } else {
        library.sittings().remove(after.id);
    }
    transaction.commit();
}

}  // namespace

Edit change_client(const Client& before, const Client& after) {
    return change_row(said(QT_TRANSLATE_NOOP("record_edits", "changed the client %1"), after.name),
                      &Library::clients, before, after);
}

Edit change_look(const Look& before, const Look& after) {
    return change_row(said(QT_TRANSLATE_NOOP("record_edits", "changed the look %1"), after.name),
                      &Library::looks, before, after);
}

Edit add_client(const Client& client) {
    return add_row(said(QT_TRANSLATE_NOOP("record_edits", "added the client %1"), client.name),
                   &Library::clients, client);
}

Edit add_look(const Look& look) {
    return add_row(said(QT_TRANSLATE_NOOP("record_edits", "added the look %1"), look.name),
                   &Library::looks, look);
}

Edit save_sitting(const Sitting& before, const Sitting& after, const std::vector<Look>& looks) {
    const auto save = std::make_shared<SittingSave>(SittingSave{before, after, looks, {}});
    return {said(before.id ? QT_TRANSLATE_NOOP("record_edits", "changed the %1")
                           : QT_TRANSLATE_NOOP("record_edits", "added the %1"),
                 to_utf8(shown(after.kind))),
            [save](Library& library) { save->act(library); },
            [save](Library& library) { save->take_back(library); }};
}

Edit save_wedding(const std::optional<Wedding>& before, const Wedding& after,
                  const std::vector<NamedMember>& party) {
    const auto save = std::make_shared<WeddingSave>();
    save->before = before;
    save->after = after;
    save->after.party.clear();
    save->named = party;
    return {said(before ? QT_TRANSLATE_NOOP("record_edits", "changed the wedding %1")
                        : QT_TRANSLATE_NOOP("record_edits", "added the wedding %1"),
                 after.name),
            [save](Library& library) { save->act(library); },
            [save](Library& library) { save->take_back(library); }};
}

}  // namespace quarterturn
