#pragma once

#include <QLineEdit>
#include <optional>

namespace quarterturn {

// A field for a time of day that may be left empty, as in "07:40".
class TimeWords : public QLineEdit {
    Q_OBJECT
  public:
    explicit TimeWords(const QString& name, QWidget* parent = nullptr);

    // `otherwise`: what counts while it is empty.
    void show_time(std::optional<int> minute, const QString& otherwise);

  signals:
    void given(std::optional<int> minute);  // another than was shown
    void not_understood(const QString& sentence);

  private:
    void read();

    std::optional<int> shown_;
};

}  // namespace quarterturn
