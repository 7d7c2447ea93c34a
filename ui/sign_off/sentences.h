#pragma once

#include <QStringList>

#include "ui/widgets/words.h"

namespace quarterturn {

using Sentences = std::vector<std::string>;

inline QString in_lines(const Sentences& sentences) {
    QStringList lines;
    for (const std::string& sentence : sentences) lines << from_utf8(sentence);
    return lines.join(QLatin1Char('\n'));
}

}  // namespace quarterturn
