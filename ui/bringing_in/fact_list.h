#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>
#include <vector>

namespace quarterturn {

// "Already here: 12 photos", with a line for each thing there is to say.
struct ImportFact {
    QString about;
    QStringList lines;
};

// Facts in two columns: what it is about, and what there is to say.
class FactList : public QWidget {
    Q_OBJECT
  public:
    explicit FactList(const std::vector<ImportFact>& facts, QWidget* parent = nullptr);
};

}  // namespace quarterturn
