#pragma once
// The fixed words as they stand on screen: the record's own words, through translation.

#include <QDate>
#include <QString>
#include <QStringList>
#include <array>
#include <span>
#include <string_view>

#include "indexer/record/paper.h"
#include "indexer/record/photo.h"
#include "indexer/record/time.h"

namespace quarterturn {

QString shown(Angle angle);
QString shown(Stage stage);
QString shown(SittingKind kind);
QString shown(Worn worn);
QString shown(Coverage coverage);
QString shown(Quarter quarter);
QString shown(Flaw flaw);
QString shown(Need need);
QString shown(Paper paper);           // "A4"
QString shown(const Device& device);  // "Larkmoor P3"

QString shown(Date date);             // "Saturday, 7 November 2026", in the user's own language
QString short_shown(Date date);       // "7 Nov 2026"
QString clock_shown(LocalTime time);  // "10:12", as the user's language writes it
QString clock_format();               // for Qt, without seconds
// "10:12 to 12:40"; "10:12" where it ends in the same minute.
QString hours_shown(LocalTime starts, LocalTime ends);

// As it stands where a sentence or a name begins: "Left three-quarter".
QString capitalised_words(const QString& words);

// A name to stand in a sentence: one that runs the other way does not turn what is around it.
QString isolated(const QString& name);

// "left covered, front missing, right covered, back weak": verdicts in the order of quarter_angles.
QString coverage_sentence(const Ring& ring);

QDate to_qdate(Date date);
Date from_qdate(const QDate& date);

QString from_utf8(std::string_view text);
std::string to_utf8(const QString& text);

}  // namespace quarterturn
