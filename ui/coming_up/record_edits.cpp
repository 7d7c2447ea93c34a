#include "ui/coming_up/record_edits.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

std::string said(const char* text, const std::string& name) {
    return to_utf8(QCoreApplication::translate("record_edits", text).arg(from_utf8(name)));
}

// Answers the row's number.
template <class Table, class Row>
auto save_row(Table table, const Row& row) {
    if (!row.id) return table.add(row);
    table.change(row);
    return row.id;
}

bool is_in_party(const Wedding& wedding, ClientId client) {
    return std::ranges::find(wedding.party, client, &PartyMember::client) != wedding.party.end();
}

// Nobody is twice in a party: the same name again is somebody else.
ClientId find_or_add(Library& library, const Wedding& wedding, const NamedMember& member) {
    if (member.client) return *member.client;
    for (const Client& known : library.clients().named(member.name)) {
        if (!is_in_party(wedding, known.id)) return known.id;
    }
    Client client;
    client.name = member.name;
    return library.clients().add(client);
}

void save_with_party(Library& library, Wedding wedding, const std::vector<NamedMember>& party) {
    wedding.party.clear();
    for (const NamedMember& member : party) {
        wedding.party.push_back({find_or_add(library, wedding, member), member.role});
    }
    save_row(library.weddings(), wedding);
}

void attach(Library& library, Look look, SittingId sitting, bool worked_on) {
    const bool is_there = std::ranges::find(look.sittings, sitting) != look.sittings.end();
    if (is_there == worked_on) return;
    if (worked_on) {
        look.sittings.push_back(sitting);
    } else {
        std::erase(look.sittings, sitting);
    }
    library.looks().change(look);
}

void save_with_looks(Library& library, const Sitting& sitting, const std::vector<Look>& looks) {
    const SittingId id = save_row(library.sittings(), sitting);
    for (const Look& look : library.looks().of_client(sitting.client)) {
        attach(library, look, id, std::ranges::find(looks, look.id, &Look::id) != looks.end());
    }
}

}  // namespace

Edit save_client(const Client& client) {
    return {said(client.id ? QT_TRANSLATE_NOOP("record_edits", "changed the client %1")
                           : QT_TRANSLATE_NOOP("record_edits", "added the client %1"),
                 client.name),
            [client](Library& library) { save_row(library.clients(), client); }};
}

Edit save_look(const Look& look) {
    return {said(look.id ? QT_TRANSLATE_NOOP("record_edits", "changed the look %1")
                         : QT_TRANSLATE_NOOP("record_edits", "added the look %1"),
                 look.name),
            [look](Library& library) { save_row(library.looks(), look); }};
}

Edit save_sitting(const Sitting& sitting, const std::vector<Look>& looks) {
    return {said(sitting.id ? QT_TRANSLATE_NOOP("record_edits", "changed the %1")
                            : QT_TRANSLATE_NOOP("record_edits", "added the %1"),
                 to_utf8(shown(sitting.kind))),
            [=](Library& library) { save_with_looks(library, sitting, looks); }};
}

Edit save_wedding(const Wedding& wedding, const std::vector<NamedMember>& party) {
    return {said(wedding.id ? QT_TRANSLATE_NOOP("record_edits", "changed the wedding %1")
                            : QT_TRANSLATE_NOOP("record_edits", "added the wedding %1"),
                 wedding.name),
            [=](Library& library) { save_with_party(library, wedding, party); }};
}

}  // namespace quarterturn
