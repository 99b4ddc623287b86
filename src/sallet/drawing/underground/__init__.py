"""What is under the soil: roots, bulbs, tubers, creeping stems."""
